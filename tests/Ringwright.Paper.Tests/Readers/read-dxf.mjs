// Reads a DXF file from standard input with dxf-parser and prints its units, layers and entities as JSON.
import DxfParser from 'dxf-parser';

let text = '';
for await (const part of process.stdin.setEncoding('utf8')) text += part;
const dxf = new (DxfParser.default ?? DxfParser)().parseSync(text);
console.log(JSON.stringify({ units: dxf.header.$INSUNITS, layers: Object.keys(dxf.tables.layer.layers), entities: dxf.entities }));
