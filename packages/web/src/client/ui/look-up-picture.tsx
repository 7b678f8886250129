/** Two trunks seen from below, up to their crowns, and a hand's breadth of sky between. */
export function LookUpPicture() {
  return (
    <svg class="look-up" viewBox="0 0 360 150" aria-hidden="true">
      <path class="look-up-trunk" d="M46 150L86 40M78 150L94 40M314 150L274 40M282 150L266 40" />
      <path
        class="look-up-crown"
        d="M42 44C26 22 60 2 88 12C112 -4 150 14 138 38C150 56 118 66 98 54C78 66 48 62 42 44Z"
      />
      <path
        class="look-up-crown"
        d="M318 44C334 22 300 2 272 12C248 -4 210 14 222 38C210 56 242 66 262 54C282 66 312 62 318 44Z"
      />
      <path class="look-up-eye" d="M150 118Q180 92 210 118Q180 144 150 118Z" />
      <circle class="look-up-pupil" cx="180" cy="115" r="8" />
      <path class="look-up-sight" d="M168 92L128 62M192 92L232 62" />
    </svg>
  );
}
