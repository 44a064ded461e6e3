import { type FileNote, tooLarge } from './file-note.ts';

export interface FileText {
  /** The text of the file, or undefined when it must not or cannot be read; the notes say why. */
  readonly text?: string;
  readonly notes: readonly FileNote[];
}

const refused = (say: string): FileText => ({
  notes: [{ kind: 'not-a-file', say: `${say} Nothing was changed.` }],
});

function decoded(bytes: Uint8Array, encoding: string): string | undefined {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

function marked(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | 'utf-8' {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  return bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : 'utf-8';
}

/**
 * Bytes as text: UTF-8, UTF-16 where the file is marked so, and what is neither as Windows-1252, which is then said. Bytes
 * that no text holds are refused.
 */
export function decodeText(bytes: Uint8Array): FileText {
  const encoding = marked(bytes);
  const text = decoded(bytes, encoding);
  if (text === undefined && encoding !== 'utf-8')
    return refused('This file is marked as UTF-16 text and is damaged.');
  const read = text ?? decoded(bytes, 'windows-1252') ?? '';
  if (read.includes('\u0000'))
    return refused('This file is not plain text; from a spreadsheet, save the sheet as CSV or as text.');
  return { text: read, notes: text === undefined ? [OLDER_ENCODING] : [] };
}

const OLDER_ENCODING: FileNote = {
  kind: 'said',
  say: 'The file was read as Western European text (Windows-1252). If letters look wrong, save it as UTF-8.',
};

/** Reads a file that the owner picked; one that is too large is refused before it is read. Never throws. */
export async function readFileText(file: Blob, most?: number): Promise<FileText> {
  const refusal = tooLarge(file.size, most);
  if (refusal) return { notes: [refusal] };
  try {
    return decodeText(new Uint8Array(await file.arrayBuffer()));
  } catch {
    return refused('This browser could not read the file.');
  }
}
