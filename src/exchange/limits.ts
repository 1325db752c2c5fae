/**
 * How large a file may be. Every limit is far above what a survey makes, and below what would stop the laptop.
 * The measure: a national archive of 20 million animals as CSV, about 1 GB in 20 million rows, must pass.
 */

/** Bytes of one text file: twice the national archive; Node reads no more than 2 GiB at once. */
export const maxTextBytes = 2_000_000_000;

/** Bytes of a text that has quotes: it is parsed as one string, and a JavaScript string ends near 2^29 letters. */
export const maxQuotedTextBytes = 400_000_000;

/** Rows of one file: five national archives. */
export const maxRows = 100_000_000;

/** Columns of a header row: our widest table has 27, and a slate of one column per species some hundreds. */
export const maxColumns = 2_000;

/** Letters in one cell: the limit of the spreadsheets themselves. More is a quote that was never closed. */
export const maxCellLetters = 32_767;

/** Bytes of a workbook as it lies on the disk: a full sheet of a million short rows has about 30 MB. */
export const maxWorkbookBytes = 100_000_000;

/** Bytes of all parts of a workbook unpacked; a full sheet of a million rows with ten columns has about 400 MB. */
export const maxUnpackedBytes = 500_000_000;

/** Parts within a workbook: a few for each sheet, and pictures. */
export const maxWorkbookParts = 5_000;
