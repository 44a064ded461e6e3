import sharp from 'sharp';

/** A picture as a PNG with a palette: the same drawing gives the same bytes. */
export const pngOf = (svg: string): Promise<Buffer> =>
  sharp(Buffer.from(svg))
    .png({ palette: true, colours: 16, dither: 0, effort: 1, compressionLevel: 6 })
    .toBuffer();
