# Frozen reference results for ReferenceSolidsTests, made with NumPy 1.24.2, SciPy 1.10.1 and scikit-image 0.19.3 (Debian 12).
# The three solids are made from the same SplitMix64 stream in RandomSolids.cs. Run: python3 random_solids.py
import numpy as np
import scipy.ndimage as ndi
from skimage import measure

MASK = (1 << 64) - 1


def stream(seed):
    state = seed
    while True:
        state = (state + 0x9E3779B97F4A7C15) & MASK
        z = state
        z = ((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9) & MASK
        z = ((z ^ (z >> 27)) * 0x94D049BB133111EB) & MASK
        yield ((z ^ (z >> 31)) >> 11) * 2.0 ** -53


def noise(seed, nx, ny, nz):
    u = stream(seed)
    return np.array([next(u) - 0.45 for _ in range(nx * ny * nz)]).reshape(nz, ny, nx).astype(np.float32)


def balls(seed, nx, ny, nz, count, sign):
    u = stream(seed)
    z, y, x = np.meshgrid(np.arange(nz) + 0.5, np.arange(ny) + 0.5, np.arange(nx) + 0.5, indexing="ij")
    field = np.full((nz, ny, nx), -1e3)
    for _ in range(count):
        cx, cy, cz, r = next(u) * nx, next(u) * ny, next(u) * nz, 3.0 + 5.0 * next(u)
        dx, dy, dz = x - cx, y - cy, z - cz
        field = np.maximum(field, r - np.sqrt(dx * dx + dy * dy + dz * dz))
    return (sign * field).astype(np.float32)


def squared(cells, sampling=None):
    return ndi.distance_transform_edt(cells, sampling=sampling) ** 2


def labels(cells, rank):
    found, n = ndi.label(cells, ndi.generate_binary_structure(3, rank))
    sizes = np.bincount(found.ravel())[1:].astype(np.int64)
    return n, int(sizes.max()), int((sizes * sizes).sum())


def widest(cells, rank):
    # Squared clearance of the widest way from the x = 0 side to the other through these cells, by trying every threshold.
    d2 = np.rint(squared(cells)).astype(int)
    for t in sorted(set(d2[d2 > 0].ravel()), reverse=True):
        found, _ = ndi.label(d2 >= t, ndi.generate_binary_structure(3, rank))
        if set(found[:, :, 0].ravel()) & set(found[:, :, -1].ravel()) - {0}:
            return int(t)
    return None


def surface(field, method):
    inner = np.full_like(field, -1.0)
    inner[1:-1, 1:-1, 1:-1] = field[1:-1, 1:-1, 1:-1]
    vertices, faces, _, _ = measure.marching_cubes(inner, 0.0, allow_degenerate=True, method=method)
    a, b, c = (vertices[faces[:, k]].astype(float) for k in range(3))
    return len(vertices), len(faces), measure.mesh_surface_area(vertices, faces), abs((a * np.cross(b, c)).sum() / 6.0)


def report(name, field):
    cells = field >= 0
    d2 = np.rint(squared(cells)).astype(np.int64)
    counts = np.bincount(d2.ravel(), minlength=10)
    print(name, field.shape, "set", int(cells.sum()))
    print("  edt2 sum max hist1..9", int(d2.sum()), int(d2.max()), counts[1:10].tolist())
    print("  edt2 of the empty", int(np.rint(squared(~cells)).sum()))
    print("  edt cells 1 x 1 x 1.25, sum of distances", repr(float(ndi.distance_transform_edt(cells, sampling=(1.25, 1, 1)).sum())))
    print("  labels 6 set", labels(cells, 1), "26 set", labels(cells, 3), "6 empty", labels(~cells, 1), "26 empty", labels(~cells, 3))
    print("  euler 6, 26", measure.euler_number(cells, 1), measure.euler_number(cells, 3))
    for r in (1.0, 2.2, 4.0):
        eroded = ndi.distance_transform_edt(np.pad(cells, 1))[1:-1, 1:-1, 1:-1] > r + 0.5
        opened = ndi.distance_transform_edt(~eroded) <= r + 0.5 if eroded.any() else eroded
        print("  ball", r, "eroded", int(eroded.sum()), "opened", int(opened.sum()))
    print("  widest 6, 26, empty", widest(~cells, 1), widest(~cells, 3), "set", widest(cells, 1), widest(cells, 3))
    print("  surface vertices faces area volume", surface(field, "lewiner"), surface(field, "lorensen"))


report("noise", noise(11, 24, 20, 17))
report("balls", balls(12, 40, 32, 28, 25, 1.0))
report("block without balls", balls(13, 48, 36, 30, 30, -1.0))
