import { demand, demandChoice, locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Fraction } from '../units/index.js';
import type { FeelObserver, TextureEvidence } from './evidence.js';
import { jarTestFractions } from './jar-test.js';
import { textureByFeel } from './texture-by-feel.js';
import { TEXTURE_MIDDLES } from './texture-middles.data.js';
import { TEXTURE_NEIGHBOURS } from './texture-neighbours.data.js';
import { TEXTURE_CLASSES, type TextureClass } from './texture.js';
import { textureAt } from './texture-triangle.js';
import type { TextureShare } from './textures-within.js';

/** Texture to reckon with, and what it may be instead. */
export interface ReadTexture {
  readonly texture: TextureClass;
  readonly sand: number;
  readonly clay: number;
  /** Every class it may be, the reckoned one among them, with its chance. */
  readonly possible: readonly TextureShare[];
  readonly findings: readonly Finding[];
}

/** Loam, the middle of the triangle, where nothing is known. */
const MIDDLE: TextureClass = 'loam';

/** Reads what is known of a texture. */
export function readTexture(evidence: TextureEvidence): ReadTexture {
  demandChoice('texture.from', evidence?.from, ['fractions', 'laboratory', 'jar', 'feel', 'feel path', 'unknown']);
  switch (evidence.from) {
    case 'fractions': {
      const { sand, clay } = evidence;
      demand('texture.sand', 'mass fraction', sand, { atLeast: 0, atMost: 1 });
      demand('texture.clay', 'mass fraction', clay, { atLeast: 0, atMost: 1 - sand + 1e-9 }, 'sand and clay are shares of one mass');
      const texture = textureAt(sand, clay);
      return { texture, sand, clay, possible: [certain(texture)], findings: [] };
    }
    case 'laboratory':
      demandChoice('texture.class', evidence.class, TEXTURE_CLASSES);
      return named(evidence.class, [certain(evidence.class)]);
    case 'jar': {
      const { texture, sandBand, clayBand, possible, findings } = locate('texture', () => jarTestFractions(evidence));
      return { texture, sand: sandBand.estimate, clay: clayBand.estimate, possible, findings };
    }
    case 'feel':
      demandChoice('texture.class', evidence.class, TEXTURE_CLASSES);
      return named(evidence.class, byHand(evidence.class, evidence.observer));
    case 'feel path': {
      const { texture } = locate('texture', () => textureByFeel(evidence.answers));
      return named(texture, byHand(texture, evidence.observer));
    }
    case 'unknown':
      return named(
        MIDDLE,
        TEXTURE_CLASSES.map((texture) => ({ texture, share: (1 / TEXTURE_CLASSES.length) as Fraction })),
      );
  }
}

function named(texture: TextureClass, possible: readonly TextureShare[]): ReadTexture {
  return { texture, ...TEXTURE_MIDDLES[texture], possible, findings: [] };
}

function certain(texture: TextureClass): TextureShare {
  return { texture, share: 1 as Fraction };
}

/** What a class named by hand turned out to be: itself, one of its neighbours, or any other, these shares divided evenly. */
function byHand(texture: TextureClass, observer: FeelObserver = 'seasonal staff'): readonly TextureShare[] {
  demandChoice('texture.observer', observer, ['professional', 'seasonal staff']);
  const { right, near } = HAND[observer];
  const neighbours = TEXTURE_NEIGHBOURS[texture];
  const others = TEXTURE_CLASSES.length - 1 - neighbours.length;
  const shareOf = (each: TextureClass): number => {
    if (each === texture) return right;
    return neighbours.includes(each) ? (near - right) / neighbours.length : (1 - near) / others;
  };
  const possible = TEXTURE_CLASSES.map((each) => ({ texture: each, share: shareOf(each) as Fraction }));
  return possible.sort((a, b) => b.share - a.share);
}

/** How often people name the class, and the class or a neighbour of it, by the one study that says both. */
const HAND: Readonly<Record<FeelObserver, { readonly right: number; readonly near: number }>> = {
  professional: { right: 0.66, near: 0.91 },
  'seasonal staff': { right: 0.38, near: 0.71 },
};
