/** Sources of the ground room. */
export const GROUND_REFERENCES = {
  ingersoll1954: {
    cite: 'Ingersoll, Zobel & Ingersoll, Heat Conduction with Engineering, Geological and Other Applications, University of Wisconsin Press, 1954',
    seen: 'from memory',
  },
  carslawJaeger1959: { cite: 'Carslaw & Jaeger, Conduction of Heat in Solids, 2nd edition, Oxford, 1959', seen: 'from memory' },
  shapeFactors: {
    cite: 'Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, table 4.1 (conduction shape factors)',
    seen: 'quoted',
    at: 'transcription by M. M. Yovanovich, http://mhtl.uwaterloo.ca/old/courses/me353/maple/condshpfactor/shptable4p11.html',
  },
  cengelShapeFactors: { cite: 'Cengel, Heat Transfer: A Practical Approach (row of pipes below an isothermal surface)', seen: 'from memory' },
  buriedPipeElements: {
    cite: 'Two-dimensional finite-element computation of the wall temperature of buried pipes, single, in groups and in parallel trenches',
    seen: 'original',
    at: 'step responses carried in tests/fixtures as fem-b-step.csv and fem-c-step.csv',
  },
  xiong2015: {
    cite: 'Xiong, Fisher & Spitler, Applied Energy, 2015: ring sources for flat and upright overlapped coils, validated against experiment',
    seen: 'quoted',
    at: 'abstract page, https://www.slideshare.net/ZeyuXiong/xiongfisherspitler2015',
  },
  claessonJaved2011: {
    cite: 'Claesson & Javed, ASHRAE Transactions, 2011: mean temperature of a finite line source as a single integral',
    seen: 'from memory',
  },
} as const;
