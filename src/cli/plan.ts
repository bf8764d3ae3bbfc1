import { planAnswer } from './plan/plan-answer.ts';

const { out, err, code } = planAnswer(process.argv.slice(2));
for (const line of err) console.error(line);
process.stdout.write(out);
process.exitCode = code;
