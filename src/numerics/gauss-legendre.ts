/** Gauss–Legendre on −1 … 1, sixteen points: the positive half of the abscissas and their weights. */
const HALF = [
  [0.09501250983763744, 0.1894506104550685],
  [0.2816035507792589, 0.1826034150449236],
  [0.45801677765722737, 0.16915651939500254],
  [0.6178762444026438, 0.14959598881657673],
  [0.755404408355003, 0.12462897125553387],
  [0.8656312023878318, 0.09515851168249278],
  [0.9445750230732326, 0.06225352393864789],
  [0.9894009349916499, 0.02715245941175409],
] as const;

/**
 * Visits the sixteen points of a Gauss–Legendre quadrature.
 *
 * @param from - lower end
 * @param to - upper end
 * @param visit - told the place and its weight; the weights add up to the width
 */
export function gaussLegendre(from: number, to: number, visit: (place: number, weight: number) => void): void {
  const middle = (from + to) / 2;
  const half = (to - from) / 2;
  for (const [place, weight] of HALF) {
    visit(middle - half * place, half * weight);
    visit(middle + half * place, half * weight);
  }
}
