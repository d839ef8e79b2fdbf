"""Random routes, written as TOML has them."""

from given import mm


def random_route(chance):
    return chance.choice([points, purchase, rigged, zigzag, rail, eyelets, spiral])(chance)


def points(chance):
    at = lambda: ", ".join(f'"{round(chance.uniform(0, 9), 3)} m"' for _ in range(3))
    turn = lambda: f', sheave = "{mm(chance, 8, 80)}"' if chance.random() < 0.7 else ""
    between = ", ".join(f"{{ at = [{at()}]{turn()} }}" for _ in range(chance.randint(0, 4)))
    return f"{{ points = [ {{ at = [{at()}] }}, {between + ', ' if between else ''}{{ at = [{at()}] }} ] }}"


def purchase(chance):
    return (f'{{ purchase = {chance.randint(2, 6)}, run = "{mm(chance, 300, 2500)}", sheave = "{mm(chance, 12, 50)}", '
            f'tail = "{mm(chance, 0, 900)}" }}')


def rigged(chance):
    sheaves = ", ".join(f'{{ size = "{mm(chance, 12, 50)}", turn = {chance.choice([90, 180])} }}'
                        for _ in range(chance.randint(1, 4)))
    return (f'{{ purchase = {chance.randint(2, 4)}, run = "{mm(chance, 500, 2500)}", becket = "{mm(chance, 0, 25)}", '
            f'sheaves = [ {sheaves} ], lead = "{mm(chance, 0, 1500)}", tail = "{mm(chance, 0, 900)}" }}')


def zigzag(chance):
    edge = f', edge = "{mm(chance, 3, 12)}"' if chance.random() < 0.7 else ""
    return (f'{{ lacing = "zigzag", legs = {chance.randint(3, 40)}, gap = "{mm(chance, 60, 200)}", '
            f'advance = "{mm(chance, 20, 90)}"{edge} }}')


def rail(chance):
    size = chance.uniform(20, 50)
    return (f'{{ lacing = "rail", loops = {chance.randint(3, 40)}, gap = "{mm(chance, size / 2 + 5, 100)}", '
            f'rail = "{round(size, 2)} mm", pitch = "{mm(chance, 20, 90)}" }}')


def eyelets(chance):
    return (f'{{ lacing = "{chance.choice(["criss-cross", "straight"])}", pairs = {chance.randint(3, 30)}, '
            f'gap = "{mm(chance, 30, 150)}", pitch = "{mm(chance, 20, 90)}" }}')


def spiral(chance):
    return (f'{{ lacing = "spiral", turns = {chance.randint(3, 40)}, rail = "{mm(chance, 20, 90)}", '
            f'pitch = "{mm(chance, 20, 90)}" }}')
