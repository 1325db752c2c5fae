/** A second program that is writing: takes the book of FOLDER, says "held", and keeps it until its input ends. */

import { writeSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';

const database = new DatabaseSync(join(process.argv[2]!, 'book.sqlite'));
database.exec('BEGIN IMMEDIATE');
writeSync(1, 'held\n');
process.stdin.resume();
process.stdin.on('end', () => {
  database.exec('ROLLBACK');
  process.exit(0);
});
