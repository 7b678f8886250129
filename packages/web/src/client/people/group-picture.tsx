import type { Camp, GroundXY, Plan, PlannedBerth } from "@nightspan/core";
import { berthSpot } from "../state/berth-spot.ts";

const SIDE = 220;
const ROOM = 1.12;

interface GroupPictureProps {
  readonly id: string;
  readonly withinM: number;
  readonly plan: Plan;
  readonly camp: Camp;
}

/** A group as it lies in this plan: the radius round its leader, and where each berth is. North is up. */
export function GroupPicture({ id, withinM, plan, camp }: GroupPictureProps) {
  const members = membersOf(id, plan, camp);
  const hub = members.find(({ leads }) => leads)?.spot ?? middleOf(members);
  if (hub === undefined) return null;
  const farthest = Math.max(withinM, ...members.map(({ spot }) => distance(spot, hub)));
  const pxPerM = SIDE / 2 / (farthest * ROOM);
  const at = ([xM, yM]: GroundXY): readonly [number, number] => [
    SIDE / 2 + (xM - hub[0]) * pxPerM,
    SIDE / 2 - (yM - hub[1]) * pxPerM,
  ];
  return (
    <svg class="group-picture" viewBox={`0 0 ${SIDE} ${SIDE}`} aria-hidden="true">
      <circle class="group-reach" cx={SIDE / 2} cy={SIDE / 2} r={withinM * pxPerM} />
      {members.map((member) => (
        <Plate key={member.berth.id} at={at(member.spot)} leads={member.leads} />
      ))}
      {members
        .filter(({ leads }) => leads)
        .map(({ berth, spot }) => (
          <LeaderNumber key={berth.id} at={at(spot)} number={berth.id} />
        ))}
    </svg>
  );
}

interface Member {
  readonly berth: PlannedBerth;
  readonly spot: GroundXY;
  readonly leads: boolean;
}

function membersOf(id: string, plan: Plan, camp: Camp): readonly Member[] {
  return plan.berths.flatMap((berth) => {
    const sleeper = camp.sleepers.find((one) => one.id === berth.sleeper);
    const spot = berthSpot(camp, berth);
    return sleeper?.group !== id || spot === undefined ? [] : [{ berth, spot, leads: sleeper.leads }];
  });
}

function middleOf(members: readonly Member[]): GroundXY | undefined {
  if (members.length === 0) return undefined;
  const sum = (axis: 0 | 1): number => members.reduce((total, { spot }) => total + spot[axis], 0);
  return [sum(0) / members.length, sum(1) / members.length];
}

function distance(a: GroundXY, b: GroundXY): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

interface PlateProps {
  readonly at: readonly [number, number];
  readonly leads: boolean;
}

/** A square for a berth; the leader's stands in a ring. */
function Plate({ at: [x, y], leads }: PlateProps) {
  return (
    <g class="group-plate">
      <rect x={x - 5} y={y - 5} width="10" height="10" />
      {leads ? <circle cx={x} cy={y} r="13" /> : null}
    </g>
  );
}

/** The number of the leader's berth, over everything else. */
function LeaderNumber({ at: [x, y], number }: { readonly at: PlateProps["at"]; readonly number: string }) {
  return (
    <text class="group-leader" x={x - 18} y={y - 12} text-anchor="end">
      {number}
    </text>
  );
}
