// `npm start`: serves the repository, built before, and says where the demo is.
import { serve } from './server.mjs';

const port = Number(process.env.PORT ?? 8000);
const { url } = await serve({ port }).catch(() => serve()); // taken: any free one
console.log(`Demo: ${url}/demo/ (Ctrl+C ends it)`);
