"""Small matrices of floats: product, exponential and linear equations."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

Vector = tuple[float, ...]
Matrix = tuple[Vector, ...]

_TERMS = 12
"""Terms of the exponential series; beyond them a matrix of norm 1/4 adds less than 1e-17."""


def identity(size: int) -> Matrix:
    """Ones on the diagonal."""
    return tuple(tuple(float(i == j) for j in range(size)) for i in range(size))


def add(left: Matrix, right: Matrix, factor: float = 1.0) -> Matrix:
    """``left + factor * right``."""
    return tuple(
        tuple(a + factor * b for a, b in zip(p, q, strict=True))
        for p, q in zip(left, right, strict=True)
    )


def multiply(left: Matrix, right: Matrix) -> Matrix:
    """The product of two matrices."""
    columns = tuple(zip(*right, strict=True))
    return tuple(tuple(_dot(row, column) for column in columns) for row in left)


def apply(matrix: Matrix, vector: Iterable[float]) -> Vector:
    """The product of a matrix and a column."""
    column = tuple(vector)
    return tuple(_dot(row, column) for row in matrix)


def exponential(matrix: Matrix) -> Matrix:
    """The matrix exponential by scaling and squaring of its Taylor series.

    Source: exp(A) = exp(A / 2^s)^(2^s), a textbook identity.
    """
    squarings = 0
    norm = max(sum(abs(value) for value in row) for row in matrix)
    while norm > 0.25:
        norm /= 2
        squarings += 1
    small = scale(matrix, 0.5**squarings)
    result = identity(len(matrix))
    for term in range(_TERMS, 0, -1):
        result = add(identity(len(matrix)), multiply(small, result), 1 / term)
    for _ in range(squarings):
        result = multiply(result, result)
    return result


def scale(matrix: Matrix, factor: float) -> Matrix:
    """Every entry times ``factor``."""
    return tuple(tuple(factor * value for value in row) for row in matrix)


def solve(matrix: Matrix, right: Sequence[float]) -> Vector:
    """``x`` with ``matrix x = right``, by elimination with row pivots; the matrix is regular."""
    rows = [[*row, value] for row, value in zip(matrix, right, strict=True)]
    size = len(rows)
    for column in range(size):
        pivot = max(range(column, size), key=lambda row: abs(rows[row][column]))
        rows[column], rows[pivot] = rows[pivot], rows[column]
        for row in range(size):
            if row != column:
                factor = rows[row][column] / rows[column][column]
                rows[row] = [a - factor * b for a, b in zip(rows[row], rows[column], strict=True)]
    return tuple(rows[row][size] / rows[row][row] for row in range(size))


def _dot(left: Sequence[float], right: Sequence[float]) -> float:
    return sum(a * b for a, b in zip(left, right, strict=True))
