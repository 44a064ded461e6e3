/** Said where a part of the site does not come: the connection went, or the server has a newer copy of the site. */
export const NOT_FETCHED = 'A part of this site could not be fetched.';

/** A part of the site that is sent for when it is wanted. Throws in words where it does not come. */
export async function fetched<Part>(part: Promise<Part>): Promise<Part> {
  try {
    return await part;
  } catch (cause) {
    throw new Error(NOT_FETCHED, { cause });
  }
}
