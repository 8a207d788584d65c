// Nothing: what the import of any module costs, beside which bench/import-time.ts shows the others.
