/**
 * The width that strips take side by side.
 *
 * @param strips with their widths, mm
 * @param kerf of the saw that rips them, mm
 * @returns their widths and a kerf between each two, mm
 * @valid one strip or more
 * @example rippedWidth([{ width: 100 }, { width: 60 }], 3) // => 163
 * @source geometry
 */
export const rippedWidth = (strips: readonly { readonly width: number }[], kerf: number): number =>
  strips.reduce((sum, { width }) => sum + width + kerf, -kerf);
