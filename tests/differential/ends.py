"""Every kind of end, by family; each is a function that lays an end on a maker and the ropes it is made in."""

import covered
import eyes
import hitches
import joins
import knots
import plain
import whole
import wire
from parts import EndMaker
from values import refuse_if

KINDS = {kind: made for family in (eyes, covered, knots, hitches, joins, whole, wire, plain)
         for kind, made in family.KINDS.items()}


def make_end(tables, rope, kind, fields):
    make, constructions = KINDS[kind]
    refuse_if(rope.construction not in constructions, 301)
    maker = EndMaker(tables, rope, kind, fields)
    make(maker)
    return maker.end
