import { answer } from './reckon/answer.ts';

const { print, code } = answer(process.argv.slice(2));
const pretty = process.argv[2] === 'list';
console.log(JSON.stringify(print, null, pretty ? 2 : undefined));
process.exitCode = code;
