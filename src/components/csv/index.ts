export { csvOf } from './csv.ts';
export { CSVOut } from './csv-out.ts';
