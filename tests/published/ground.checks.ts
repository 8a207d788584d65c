import type { PublishedCheck } from '../support/published.js';
import { groundCoilChecks } from './ground-coil.checks.js';
import { groundElementChecks } from './ground-elements.checks.js';
import { groundFunctionChecks } from './ground-functions.checks.js';
import { groundLayoutChecks } from './ground-layouts.checks.js';
import { groundRingChecks } from './ground-rings.checks.js';
import { groundSteadyChecks } from './ground-steady.checks.js';
import { groundStepChecks } from './ground-step.checks.js';
import { groundSurfaceChecks } from './ground-surfaces.checks.js';
import { groundWallChecks } from './ground-walls.checks.js';
import { groundYearChecks } from './ground-year.checks.js';

/** Outside checks of the ground room and of the functions it stands on. */
export const groundChecks: readonly PublishedCheck[] = [
  ...groundFunctionChecks,
  ...groundStepChecks,
  ...groundSteadyChecks,
  ...groundElementChecks,
  ...groundWallChecks,
  ...groundCoilChecks,
  ...groundRingChecks,
  ...groundLayoutChecks,
  ...groundSurfaceChecks,
  ...groundYearChecks,
];
