/** Marks of the trade, struck in pencil: drawn in the current colour. */
function Mark({ path }: { path: string }) {
  return (
    <svg class="mark" width="22" height="22" viewBox="0 0 24 24" aria-hidden="true">
      <path
        d={path}
        fill="none"
        stroke="currentColor"
        stroke-width="2"
        stroke-linecap="round"
        stroke-linejoin="round"
      />
    </svg>
  );
}

/** The triangle struck across a panel's boards. */
export const TriangleMark = () => <Mark path="M12 4 21 20H3z" />;
/** A chalk tick. */
export const DoneMark = () => <Mark path="M4 13l5 6L20 5" />;
/** Time passing: waiting for glue, rest or cure. */
export const WaitMark = () => <Mark path="M6 3h12M6 21h12M7 3c0 5 10 6 10 9s-10 4-10 9M17 3c0 5-10 6-10 9s10 4 10 9" />;
