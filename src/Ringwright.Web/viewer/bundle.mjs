// Bundles the viewer for the browser: node bundle.mjs OUTPUT-FOLDER
import { build } from 'esbuild';

await build({
  entryPoints: { viewer: 'src/main.js' },
  outdir: process.argv[2],
  bundle: true,
  format: 'esm',
  target: 'es2022',
  minify: true,
  legalComments: 'eof',
  loader: { '.glsl': 'text' },
  logLevel: 'warning',
});
