import { publishedChecks } from '../tests/published/all.js';
import { deviation } from '../tests/support/published.js';

const rows = publishedChecks.map((check) => {
  const shares = check.values.map((value) => deviation(value, value.tolerance ?? check.tolerance));
  const worst = shares.reduce((a, b) => (b.share > a.share ? b : a), { computed: NaN, off: 0, share: 0 });
  return { check, worst, pass: shares.length > 0 && worst.share <= 1 };
});

for (const { check, worst, pass } of rows) {
  const { relative, absolute } = check.tolerance;
  const allowed = [
    relative === undefined ? '' : `${relative.toExponential(0)} of the value`,
    absolute === undefined ? '' : `${String(absolute)} ${check.unit}`,
  ]
    .filter((text) => text !== '')
    .join(' or ');
  console.log(
    `${pass ? 'pass' : 'FAIL'}  ${check.id.padEnd(16)} ${check.quantity} [${check.unit}]: ${String(check.values.length)} values, worst ${worst.off.toExponential(1)} (${worst.share.toFixed(3)} of the tolerance: ${allowed})\n` +
      `      ${check.source}; ${check.seen}`,
  );
}
const failed = rows.filter(({ pass }) => !pass).length;
console.log(
  `\n${String(rows.length - failed)} of ${String(rows.length)} outside checks hold, ${String(rows.reduce((sum, { check }) => sum + check.values.length, 0))} values`,
);
process.exitCode = failed === 0 ? 0 : 1;
