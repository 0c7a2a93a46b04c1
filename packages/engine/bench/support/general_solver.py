"""Factorises and solves the uncondensed matrix of a bench building with a general sparse direct solver (SuperLU in SciPy)."""
import sys
import time

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import splu

folder = sys.argv[1]
rows = np.fromfile(folder + "/rows", dtype=np.int32)
columns = np.fromfile(folder + "/columns", dtype=np.int32)
values = np.fromfile(folder + "/values", dtype=np.float64)
load = np.fromfile(folder + "/load", dtype=np.float64)
matrix = coo_matrix((values, (rows, columns))).tocsc()
start, used = time.perf_counter(), time.process_time()
solution = splu(matrix, permc_spec="MMD_AT_PLUS_A", diag_pivot_thresh=0.0, options={"SymmetricMode": True}).solve(load)
wall, cpu = time.perf_counter() - start, time.process_time() - used
residual = np.abs(matrix @ solution - load).max() / np.abs(load).max()
print(f"{wall * 1000:.0f} {cpu * 1000:.0f} {matrix.shape[0]} {residual:.1e} {np.abs(solution).max():.9g}")
