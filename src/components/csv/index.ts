export { csvOf } from './csv.ts';
export { CSVOut } from './csv-out.ts';
export { nameView, rowsOf, sheetView, type Sheet } from './sheet.ts';
export { styles as sheet } from './styles.ts';
