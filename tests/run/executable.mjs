import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

/** Whether a path can be executed. */
export function isExecutable(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** The path of the first of some programs that is on the PATH; undefined if none is. */
export function onPath(...names) {
  const folders = (process.env.PATH ?? '').split(delimiter);
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).find(isExecutable);
}
