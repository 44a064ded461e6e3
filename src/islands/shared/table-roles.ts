/**
 * On a phone the rows of a table are drawn as blocks, and a browser then forgets that it is a table. These roles say it
 * again to a reader who hears it.
 */
export const asTable = { role: 'table' } as const;
export const asRow = { role: 'row' } as const;
export const asRowHead = { role: 'rowheader', scope: 'row' } as const;
export const asColumnHead = { role: 'columnheader', scope: 'col' } as const;
export const asCell = { role: 'cell' } as const;
