// Lists that are made once and used again: to make a new one takes longer than what a small circuit does with it. What they hold
// matters within one function only.

/** A list of whole numbers with room for so many: this one, or a larger one. */
export const ints = (list: Int32Array, count: number): Int32Array =>
  list.length < count ? new Int32Array(2 * count) : list;

/** The same of numbers. */
export const floats = (list: Float64Array, count: number): Float64Array =>
  list.length < count ? new Float64Array(2 * count) : list;
