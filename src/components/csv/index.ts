export { csvOf } from './csv.ts';
export { CSVOut } from './csv-out.ts';
export { styles as sheet } from './styles.ts';
