/** A part of the package that few pages need, once it has come; undefined where it does not, which the console is told. */
export async function later<T>(part: Promise<T>): Promise<T | undefined> {
  try {
    return await part;
  } catch (error) {
    console.warn('Rheolet: a part did not load.', error);
    return undefined;
  }
}
