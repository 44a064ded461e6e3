import temml from 'temml';

/** Looks come from our own sheet: the content policy refuses style attributes, and the library's classes mean nothing here. */
const bare = (mathml: string): string => mathml.replace(/ (?:style|class)="[^"]*"/g, '');

/** An equation in TeX as presentation MathML. Throws where the TeX is wrong, so that the build stops. */
export const mathOf = (tex: string): string =>
  bare(temml.renderToString(tex, { displayMode: true, throwOnError: true, annotate: false }));
