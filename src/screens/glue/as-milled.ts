/** A stage as a milling run names it: panel 2 of a lid is `lid/2` in gluing and `lid#2` there, its sub-panels `lid/2/1` and `lid#2a`. */
export const asMilled = (stage: string): string =>
  stage.replace(
    /^([^/]+)\/(\d+)(?:\/(\d+))?$/,
    (_, part, unit, sub) => `${part}#${unit}${sub ? String.fromCharCode(96 + Number(sub)) : ''}`,
  );
