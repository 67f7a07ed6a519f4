/** More is refused before it is looked at; a board file with a thousand entries has some 200 kB. */
export const LARGEST_BOARD_FILE_BYTES = 2_000_000;
