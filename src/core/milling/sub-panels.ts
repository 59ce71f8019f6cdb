/**
 * How a panel's strips group into sub-panels that still fit the planer, as few as possible, strips in their order.
 *
 * - `widths`: finished widths of the strips in order, mm; `planerWidth`: mm, null without a planer
 *
 * Result: for every sub-panel the indices of its strips. One group without a planer: nothing is gained by more.
 * Valid for strips narrower than the planer; a wider one stands alone. Errors: none.
 *
 * Example: five strips of 100 and a planer of 254: groups of 2, 2 and 1.
 *
 * Source: common practice; that filling each group in turn is fewest for a fixed order is arithmetic.
 */
export function subPanels(widths: readonly number[], planerWidth: number | null): number[][] {
  const groups: number[][] = [];
  let width = Number.MAX_VALUE;
  widths.forEach((strip, index) => {
    if (groups.length === 0 || (planerWidth !== null && width + strip > planerWidth)) {
      groups.push([index]);
      width = strip;
    } else {
      groups[groups.length - 1]?.push(index);
      width += strip;
    }
  });
  return groups;
}
