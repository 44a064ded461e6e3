/** Id of the hatch that stands for the lathe out of use, defined once on the page. */
export const STRIP_HATCH = 'strip-out-of-use';
