import temml from 'temml';

/** Looks come from our own sheet: the content policy refuses style attributes, and the library's classes mean nothing here. */
const bare = (mathml: string): string => mathml.replace(/ (?:style|class)="[^"]*"/g, '');

/**
 * Marks the letters, so that our sheet may slant them: a browser without a font of slanted mathematical letters draws
 * nothing where they stand.
 */
const lettered = (mathml: string): string =>
  mathml.replace(/<mi>([a-z]|\p{Script=Greek})<\/mi>/giu, '<mi class="letter">$1</mi>');

/** An equation in TeX as presentation MathML. Throws where the TeX is wrong, so that the build stops. */
export const mathOf = (tex: string): string =>
  lettered(bare(temml.renderToString(tex, { displayMode: true, throwOnError: true, annotate: false })));
