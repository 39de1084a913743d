"""Kept texts: what a book keeps as English text, and what only the farm or a suspect says, as templates.

In    nothing
Out   `KEPT`: templates by which such text is known again (`spoken.py`)
Not   sentences that carry their template with them (`data.sentence.Sentence`)
"""

from functools import partial

from gui.language.words import noop

__all__ = ["KEPT"]

K = partial(noop, "Kept")
KEPT = (
    # changes, as undo names them
    K("photo matched to {code}"),
    K("{count} photos matched"),
    K("{code} and {other} swapped"),
    K("{what} left out"),
    K("clock of 1 photo {how}"),
    K("clock of {count} photos {how}"),
    K("mended"),
    K("believed"),
    K("mold on {what}"),
    K("not mold on {what}"),
    K("suspect open again on {what}"),
    K("a photo"),
    K("corners of {what}"),
    K("canopy of {what}"),
    K("{count} readings"),
    K("readings of {what}"),
    K("{count} trays"),
    K("a bench test"),
    K("weight of {what}"),
    K("medium temperature of {what}"),
    K("air temperature of {what}"),
    K("humidity of {what}"),
    K("water given of {what}"),
    K("feed given of {what}"),
    K("height of {what}"),
    K("fresh mass of {what}"),
    K("cut quality of {what}"),
    K("slid at the cut of {what}"),
    K("shelf life of {what}"),
    K("taste of {what}"),
    K("labour of {what}"),
    K("sweepings of {what}"),
    K("sweepings by eye of {what}"),
    K("break-down by eye of {what}"),
    K("{kind} of {what} changed"),
    K("{kind} of {what} deleted"),
    K("mold taken out: {what}"),
    K("thrown away: {what}"),
    K("uncovered: {what}"),
    K("watered: {what}"),
    K("set up: {what}"),
    K("cleaned: {what}"),
    K("note: {what}"),
    K("sowed: {what}"),
    K("fed: {what}"),
    K("turned: {what}"),
    K("moved: {what}"),
    K("cut: {what}"),
    K("wetting test of {medium} begun"),
    K("cooling test of {medium} begun"),
    K("breakdown test of {medium} begun"),
    K("wetting test of {medium} deleted"),
    K("cooling test of {medium} deleted"),
    K("breakdown test of {medium} deleted"),
    K("{count} photos of the heap"),
    K("tray {code} added"),
    K("{count} trays added"),
    K("{count} trays from {name}"),
    K("book {name} brought in"),
    K("conditions of {what}"),
    K("{what} marked as done"),
    K("{what} grows again"),
    K("trusted medium: {name}"),
    K("none"),
    K("weekly"),
    K("{what} described"),
    K("limits of media"),
    K("trays a week"),
    K("number of {what}: {about}"),
    K("number of {what} put back: {about}"),
    K("all media"),
    K("station cards of {name}"),
    K("{what} seen"),
    K("{what} put off until tomorrow"),
    K("plan of {what}"),
    K("limits and weights of {what}"),
    K("margin of {what}: {number} points"),
    K("places of {what} drawn"),
    K("places of {what} entered by hand"),
    K("round of scoring {what} by eye"),
    K("score by eye {place} of {total}"),
    # fates of photos
    K("{code}, matched by its tag"),
    K("{code}, matched by its tag, coverage {number} %"),
    K("{code}, matched by the order of the walk"),
    K("{code}, matched by the order of the walk, coverage {number} %"),
    K("{code}, matched by you"),
    K("{code}, matched by you, coverage {number} %"),
    K("probably {code}, by the order of the walk: confirm it or choose the tray"),
    K("no tag read: choose the tray"),
    K("more than one tag hangs on this tray: choose the tray, and leave only its own tag there"),
    K("tag {number} belongs to no tray that grew at that time: choose the tray"),
    K("not used: {reason}"),
    K("{code}: not used: {reason}"),
    K("{code}: the tray's rim is not sure: drag the four corners onto the inner edge"),
    K("already in the book"),
    K("already in the book: {was}"),
    K("left out by you"),
    # suspects: what speaks for mold
    K("white web {width} mm wide on the bare medium"),
    K("white web {width} mm wide across hulls"),
    K("white web {width} mm wide between leaves"),
    K("grey web {width} mm wide on the bare medium"),
    K("grey web {width} mm wide across hulls"),
    K("grey web {width} mm wide between leaves"),
    K("white web {width} mm wide"),
    K("grey web {width} mm wide"),
    K("white web {width} mm wide on the bare {medium}"),
    K("grey web {width} mm wide on the bare {medium}"),
    K("no bare medium beside it to compare with"),
    K("no bare {medium} beside it to compare with"),
    K("lighter than the {medium} around"),
    K("darker than the {medium} around"),
    K("as light as the {medium} around"),
    K("greyer and lighter than the {medium} around"),
    K("greyer and darker than the {medium} around"),
    K("greyer and as light as the {medium} around"),
    K("not white fans along roots"),
    K("bright white, so it may be root hairs"),
    K("bright white, before root hairs stand"),
    K("bright white on day {day}, when root hairs stand in fans: look again tomorrow"),
    K("bright white, yet on day {day} root hairs have mostly faded"),
    K("beside the tray's wall, so it may be the wall"),
    K("in the glare of a lamp, so it may be that"),
    K("smooth as a glove, a tool or a drop on the lens, so it may be that"),
    K("it glitters a little, as wet ground does"),
    # suspects: what became of them
    K("No longer seen on {day}, {was} cm² before. Root hairs fade, mold seldom does."),
    # the look list about mold
    K("You said mold on the photo of {day}; the tray still stands on the rack."),
    K("Take the tray away from the others, closed, and note on its sheet that it was thrown away."),
    K("{count} patches that may be mold, the largest {area} cm²"),
    K("1 patch that may be mold, the largest {area} cm²"),
    K(
        "{count} patches that may be mold, the largest {area} cm², {x} cm from the left and {y} cm from the "
        "far side",
    ),
    K(
        "1 patch that may be mold, the largest {area} cm², {x} cm from the left and {y} cm from the far side",
    ),
    K("grown from {then} to {now} cm² since {day}"),
    K("smaller than on {day} ({area} cm²)"),
    K("as large as on {day} ({area} cm²)"),
    K("not grown for {days} days"),
    K("last seen on {day}, leaves may hide it now"),
    K("last seen on {day}"),
    K("the newest photo, which is in doubt, does not tell whether it is gone"),
    K("on an earlier photo of {day}, not on the newest"),
    K(
        "Lift the leaves at the place without touching what is under them: a grey web over stems and hulls "
        "speaks for mold, a white fan at each root that lies flat when misted for root hairs. Then say "
        "which it is.",
    ),
    K("confidence {number}"),
    K(
        "Look at the place without touching it: a grey web over stems and hulls speaks for mold, a white fan "
        "at each root that lies flat when misted for root hairs. Then say which it is.",
    ),
    K(
        "A flag is a reason to look, no finding; no flag is no proof that a tray is safe. Do not "
        "taste, sell or give away from a tray with mold. Open it away from others, with gloves and a "
        "suitable respirator; keep people with asthma or weak immunity away. Clean tray and tools afterwards."
    ),
    # conditions of a tray
    K("in the tray"),
    K("on an upturned tray"),
    K("top"),
    K("bottom"),
    K("both"),
    K("as now"),
    K("brighter"),
    K("with heat mat"),
    K("without heat mat"),
    K("stacked"),
    K("not stacked"),
    K("heat mat"),
    K("medium"),
    K("stacking"),
    K("seating"),
    K("watering"),
    K("feed"),
    K("light"),
    # units
    K("/tray"),
    K("a tray"),
    K("days"),
    K("g/tray"),
    K("kWh/tray"),
    K("kg/tray"),
    K("l/tray"),
    K("marks"),
    K("share"),
    K("times"),
    K("weeks"),
    # blocks of a trial
    K("shelf {name}"),
    K("shelves {one} and {other}"),
    K("shelves {one} and {other}, round {turn}"),
    K("a guess, no trays of yours yet"),
    K("shelf {name}, part {part}"),
    K("shelf {name}, round {turn}"),
    K("shelf {name}, part {part}, round {turn}"),
    # a farm
    K("scoring on a farm needs one more library: install Evenstand with its extra 'farm'"),
    K(
        "nobody answers at {address}: look whether the farm's scheduler runs there, and whether this machine "
        "reaches it",
    ),
    K("the farm at {address} has no workers: start some there, then try again"),
    K("the worker {worker} has no Evenstand, or an older one: install this version there"),
    K(
        "the worker {worker} scores by another version ({theirs}), and scores would be mixed: bring that "
        "machine or this one up to date",
    ),
    K(
        "the farm at {address} does not answer any more; all photos stored so far are safe: run the same "
        "again when it is back, and it goes on from there",
    ),
    # looks, as versions until November 2026 kept them
    K("the day before"),
    K(
        "Coverage of the growing bed {now} % on day {age}; earlier trays of {crop} had {middle} % at that "
        "age, and the day before it was behind them too."
    ),
    K(
        "Coverage {now} % on day {age}; earlier trays of {crop} had {middle} % at that age, and the day "
        "before it was behind them too."
    ),
)
