/** The draft that keeps which step of a run is looked at. */
export const placeKey = (runId: string) => `mill-place-1-${runId}`;
