// Compares each line of print_air with psychrolib. Saturation to 3e-4 of its value, as its
// own tests hold it; dew points to 0.01 C; humidities to 3e-4.
const loaded = require('psychrolib');
const psy = loaded.GetSatVapPres ? loaded : new loaded();
psy.SetUnitSystem(psy.SI);
const lines = require('fs').readFileSync(0, 'utf8').trim().split('\n');
let compared = 0;
let failed = 0;
function compare(line, ours, theirs, most) {
    compared++;
    if (Math.abs(ours - theirs) <= most) return;
    failed++;
    console.log(`${line}: psychrolib says ${theirs}`);
}
for (const line of lines) {
    const [what, ...texts] = line.split(' ');
    const [a, b, c] = texts.map(Number);
    if (what === 'S') {
        const theirs = psy.GetSatVapPres(a);
        compare(line, b, theirs, 3e-4 * theirs);
    } else if (what === 'D') {
        compare(line, c, psy.GetTDewPointFromRelHum(a, Math.min(b, 1)), 0.01);
    } else {
        compare(line, c, psy.GetRelHumFromTDewPoint(a, b), 3e-4);
    }
}
console.log(`psychrolib: ${compared} compared, ${failed} differ`);
process.exit(failed === 0 && compared > 500 ? 0 : 1);
