#!/usr/bin/python3
"""Cuts a CSV job with the C library, through ctypes alone: cut_job.py LIBRARY JOB.csv"""

import ctypes
import sys
from ctypes import POINTER, byref, c_char, c_char_p, c_double, c_int32, c_int64, c_uint32, c_uint64, c_void_p


class Fault(ctypes.Structure):
    _fields_ = [
        ("size", c_uint32), ("code", c_int32), ("text", c_char * 512), ("at", c_char * 256),
        ("field", c_char * 64), ("rule", c_char * 128),
    ]  # fmt: skip


class Piece(ctypes.Structure):
    """The members up to `finished_m`: the library writes no more than `size` says."""

    _fields_ = [
        ("size", c_uint32), ("fault_code", c_int32), ("name", c_char_p), ("boat", c_char_p),
        ("rope", c_char_p), ("end_a", c_char_p), ("end_b", c_char_p), ("state", c_char_p),
        ("pair", c_char_p), ("fit_first", c_char_p), ("lot", c_char_p), ("colour", c_char_p),
        ("note", c_char_p), ("quantity", c_int64), ("cut_nm", c_int64), ("cut_m", c_double),
        ("finished_m", c_double),
    ]  # fmt: skip


def record(kind):
    made = kind()
    made.size = ctypes.sizeof(kind)
    return made


def declare(library):
    """Tells ctypes what it cannot know: that handles are pointers and counts have 64 bits."""
    calls = {
        "splice_book_open": [c_void_p, POINTER(c_void_p), POINTER(Fault)],
        "splice_sheet_open": [c_void_p, c_void_p, POINTER(c_void_p), POINTER(Fault)],
        "splice_sheet_add_csv": [c_void_p, c_char_p, c_uint64, c_char_p, POINTER(Fault)],
        "splice_sheet_piece": [c_void_p, c_uint64, POINTER(Piece), POINTER(Fault)],
        "splice_sheet_piece_fault": [c_void_p, c_uint64, POINTER(Fault), POINTER(Fault)],
    }
    for name, arguments in calls.items():
        getattr(library, name).argtypes = arguments
    library.splice_sheet_piece_count.argtypes = [c_void_p]
    library.splice_sheet_piece_count.restype = c_uint64
    library.splice_sheet_close.argtypes = [c_void_p]
    library.splice_book_close.argtypes = [c_void_p]


def check(status, fault):
    if status != 0:
        sys.exit(f"fault {status}: {fault.text.decode()}")


def print_pieces(library, sheet, fault):
    for index in range(library.splice_sheet_piece_count(sheet)):
        piece = record(Piece)
        check(library.splice_sheet_piece(sheet, index, byref(piece), byref(fault)), fault)
        if piece.fault_code == 0:
            print(f"{piece.name.decode()}: cut {piece.cut_m:.3f} m")
        else:
            why = record(Fault)
            library.splice_sheet_piece_fault(sheet, index, byref(why), None)
            print(f"{piece.name.decode()}: fault {why.code}, {why.text.decode()}")


def main(library_file, job_file):
    library = ctypes.CDLL(library_file)
    declare(library)
    fault, book, sheet = record(Fault), c_void_p(), c_void_p()
    check(library.splice_book_open(None, byref(book), byref(fault)), fault)
    check(library.splice_sheet_open(book, None, byref(sheet), byref(fault)), fault)
    with open(job_file, "rb") as file:
        job = file.read()
    check(library.splice_sheet_add_csv(sheet, job, len(job), job_file.encode(), byref(fault)), fault)
    print_pieces(library, sheet, fault)
    library.splice_sheet_close(sheet)
    library.splice_book_close(book)


if __name__ == "__main__":
    main(*sys.argv[1:])
