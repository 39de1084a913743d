"""Why a number is missing, or a photo cannot be used: one sentence each that a grower can act on.

`None` is for the computer, the `Reason` is for the person. Screens translate a reason by its name.
"""

from enum import StrEnum

__all__ = ["RETAKE", "Reason"]


class Reason(StrEnum):
    """Why something cannot be told, and what to do about it."""

    # the file
    EMPTY = "the file is empty: copy it from the phone again"
    CUT_SHORT = "the file is cut short or damaged: copy it from the phone again"
    NO_PICTURE = "this is not a picture: leave the file out, or copy the photo from the phone again"
    KIND = "this kind of picture is not read: use JPEG, PNG, TIFF, WebP or HEIC"
    TOO_MANY_PIXELS = "the picture has more than 100 million pixels: save it smaller"
    TOO_BIG = "the file has more than 150 MB: save the picture smaller, as JPEG"
    TOO_SMALL = "the picture is too small to score: use the phone's full size"
    UNREADABLE = "the file cannot be opened: look whether it is still there and may be read"
    KILLED = "reading this file stopped the worker: save the picture again as JPEG and bring that in"
    OUR_MISTAKE = (
        "this photo could not be scored, and that is a mistake in the program: the file is as it was"
    )
    ALTERED = "the file changed while it was read: bring it in again when it is whole"
    CHANGED = (
        "another program has changed the photo in the book, so it was not measured again: bring the camera's "
        "own file in once more"
    )
    NO_PICTURES = "there is no picture in this folder: name the folder that the photos lie in"
    GREY = "the picture has no colour: photograph in colour"
    INKS = "the picture was saved in printing inks, so its colours are only near: send the camera's own file"

    # the light
    BLURRED = "too blurred to tell shoots from medium: hold the phone still, or add light"
    TOO_DARK = "too dark: add light, or hold the phone still for a longer exposure"
    TOO_BRIGHT = "burnt out: turn the light down or step out of direct sun"
    PURPLE = "purple, red or blue light: switch the grow light to white for the photo"
    COLOURED = "light of one colour, more than the grey patch can set right: photograph in white light"
    FADED = (
        "faded colours: switch off the camera's filters, wipe its lens, take off a lid or a dome, and "
        "photograph in full colour"
    )
    GLARE = (
        "glare, or something white, hides part of the tray: look what it is, switch the flash off, and move "
        "the lamp or the phone"
    )
    HIDDEN = (
        "part of the tray is blurred, or something smooth hides it, a hand, a tool or a drop on the lens: "
        "look what it is, switch portrait mode off, and photograph again without it"
    )

    # the tray
    NO_TRAY = "no tray seen: photograph it from above with its whole rim in the picture"
    CUT_OFF = (
        "part of the tray lies outside the picture: photograph it again with its whole rim in the picture"
    )
    TOO_FAR = "the tray is too small in the picture: go nearer, or send the photo in the phone's full size"
    UNSURE_FRAME = "the tray's rim is not sure: drag the four corners onto the inner edge"

    # how far the method can be trusted
    PLAIN_ONLY = (
        "the learned model is missing or damaged, so the plain method was used: install the program again"
    )
    DOUBTFUL = "coverage is doubtful here: compare the canopy outline with the photo before you rely on it"
    APART = "two ways to tell canopy from medium disagree here: compare the canopy outline with the photo"

    # two photos of one tray
    NOTHING_STAYED = (
        "too much changed between the two photos to lay them on each other: compare them by eye, side by side"
    )
    FIRST_PHOTO = "no earlier photo of this tray that counts"
    ONE_PATCH = "the grey patch was seen in only one of the two photos, so their colours are not compared"
    OTHER_METHODS = "the two photos were scored by different methods: compare them by eye, side by side"

    # single numbers
    NO_SCALE = "the scale is not known, so nothing can be measured in mm"
    NO_CANOPY = "no canopy yet"
    LITTLE_CANOPY = "under 10 % coverage: evenness is not yet meaningful"
    NOT_UP = "under 10 % coverage: the crop is not up yet, so nothing counts as a gap"
    ALL_EDGE = "the tray is too small for a middle to hold its outer 25 mm against"
    NO_BED = "no growing bed shows, so canopy is no share of it: look whether the corners are right"
    LITTLE_BED = "too little of the growing bed shows there to tell a share of it"
    BEFORE_BED = "scored before the share of the growing bed was measured: score this photo again"
    ALL_ALIKE = "all cells are alike, so there is no pattern to measure"
    NO_HUE = "too little colour for a hue"
    NOT_GREEN = "mostly pale or red: the dark green index is for green canopy only"
    NO_TIME = "the file does not say when it was taken: set the clock of the camera"
    NO_TAG = "no tag read"
    TWO_TAGS = "more than one tag hangs on this tray: leave only its own there"
    NO_PATCH = "no grey patch seen, so the colour is as the camera gave it"
    NO_FOCAL_LENGTH = "the camera's focal length is not known and the photo is too straight to tell it"
    NO_EDGE = "no sharp edge to measure on"
    MENDED = "a person has mended the canopy, so how far coverage may be off is not known"
    NO_DOUBT = "how far coverage may be off is told only by the learned model, on a tray of known scale"


RETAKE = frozenset({Reason.COLOURED, Reason.FADED, Reason.GLARE, Reason.HIDDEN})
"""Notes of a score that another photo, taken as they say, would be free of."""
