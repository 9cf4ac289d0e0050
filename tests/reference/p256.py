# SPDX-License-Identifier: GPL-3.0-or-later
"""ECDSA on P-256 over SHA-256 (FIPS 186-4, SEC 1), enough to verify the signed heads of a record.

Slow and plain; it signs nothing. refold_selftest.py holds it to the example of RFC 6979, A.2.5.
"""
import hashlib

P = 2**256 - 2**224 + 2**192 + 2**96 - 1
N = 0xFFFFFFFF00000000FFFFFFFFFFFFFFFFBCE6FAADA7179E84F3B9CAC2FC632551
B = 0x5AC635D8AA3A93E7B3EBBD55769886BC651D06B0CC53B0F63BCE3C3E27D2604B
G = (0x6B17D1F2E12C4247F8BCE6E563A440F277037D812DEB33A0F4A13945D898C296,
     0x4FE342E2FE1A7F9B8EE7EB4A7C0F9E162BCE33576B315ECECBB6406837BF51F5)
# SubjectPublicKeyInfo of an uncompressed P-256 point (RFC 5480): what stands before the two coordinates.
SPKI = bytes.fromhex("3059301306072a8648ce3d020106082a8648ce3d03010703420004")


def point_add(a, b):
    if a is None or b is None:
        return a or b
    if a[0] == b[0]:
        if (a[1] + b[1]) % P == 0:
            return None
        slope = (3 * a[0] * a[0] - 3) * pow(2 * a[1], -1, P) % P
    else:
        slope = (b[1] - a[1]) * pow(b[0] - a[0], -1, P) % P
    x = (slope * slope - a[0] - b[0]) % P
    return x, (slope * (a[0] - x) - a[1]) % P


def point_times(factor, point):
    total = None
    while factor:
        if factor & 1:
            total = point_add(total, point)
        point, factor = point_add(point, point), factor >> 1
    return total


def signature_holds(key_der, text, signature_der):
    """Whether ECDSA over SHA-256 verifies; DER of at most 127 bytes, which is all P-256 needs."""
    if key_der[:len(SPKI)] != SPKI or len(key_der) != len(SPKI) + 64:
        return False
    key = int.from_bytes(key_der[-64:-32], "big"), int.from_bytes(key_der[-32:], "big")
    if max(key) >= P or (key[1] ** 2 - key[0] ** 3 + 3 * key[0] - B) % P:
        return False
    if len(signature_der) < 8 or signature_der[0] != 0x30 or signature_der[1] != len(signature_der) - 2:
        return False
    numbers, rest = [], signature_der[2:]
    while rest:
        if len(rest) < 3 or rest[0] != 2 or len(rest) < 2 + rest[1]:
            return False
        numbers.append(int.from_bytes(rest[2:2 + rest[1]], "big", signed=True))
        rest = rest[2 + rest[1]:]
    if len(numbers) != 2 or not all(0 < number < N for number in numbers):
        return False
    r, s = numbers
    inverse = pow(s, -1, N)
    digest = int.from_bytes(hashlib.sha256(text).digest(), "big")
    found = point_add(point_times(digest * inverse % N, G), point_times(r * inverse % N, key))
    return found is not None and found[0] % N == r
