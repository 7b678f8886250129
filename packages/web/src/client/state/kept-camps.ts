import { openDB, type DBSchema, type IDBPDatabase } from "idb";

/** A camp as kept on this device: the camp file's own form, and when it was last changed. */
export interface KeptCamp {
  readonly id: string;
  readonly document: unknown;
  readonly savedAt: number;
}

interface Store extends DBSchema {
  camps: { key: string; value: KeptCamp; indexes: { savedAt: number } };
}

let opening: Promise<IDBPDatabase<Store>> | undefined;

function database(): Promise<IDBPDatabase<Store>> {
  opening ??= openDB<Store>("nightspan", 1, {
    upgrade(fresh) {
      fresh.createObjectStore("camps", { keyPath: "id" }).createIndex("savedAt", "savedAt");
    },
  });
  return opening;
}

export async function keepCamp(camp: KeptCamp): Promise<void> {
  await (await database()).put("camps", camp);
}

/** All camps of this device, the last changed one first. */
export async function keptCamps(): Promise<readonly KeptCamp[]> {
  const camps = await (await database()).getAllFromIndex("camps", "savedAt");
  return camps.reverse();
}

export async function forgetCamp(id: string): Promise<void> {
  await (await database()).delete("camps", id);
}
