"""One sheet carried out on the model, in the order printed. What goes wrong first ends it."""

import covered
import measured
import on_the_line
import on_the_rope
from model import Model, Refused

ACTIONS = {**on_the_rope.ACTIONS, **on_the_line.ACTIONS}


def carry_out(sheet):
    """Sentences that say what is wrong; none if the piece comes out as the ledger says."""
    if wrong := [*measured.unbalanced(sheet), *measured.ill_marked(sheet)]:
        return wrong
    model = Model(sheet)
    for place, step in enumerate(sheet.steps, 1):
        if step.action not in ACTIONS:
            return [f"step {place}: no such action as {step.action}"]
        try:
            ACTIONS[step.action](model, step)
        except Refused as why:
            return [f"step {place} (end {step.end}, {step.action} {step.at}): {why}: {step.text[:90]!r}"]
    return [*measured.broken(model), *covered.broken(model)]
