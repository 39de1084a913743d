from PySide6.QtCore import QRectF, QSizeF

from gui.photo.plates import place_beside

ROOM = QRectF(0, 0, 600, 300)
PLATE = QSizeF(120, 20)


def test_a_plate_stands_above_what_it_names():
    place = place_beside(QRectF(300, 150, 30, 30), PLATE, ROOM, [])

    assert place.bottom() < 150
    assert place.center().x() == 315


def test_at_the_right_edge_of_the_picture_the_word_stays_whole():
    place = place_beside(QRectF(565, 150, 30, 30), PLATE, ROOM, [])

    assert place.right() <= ROOM.right()
    assert place.bottom() < 150


def test_below_the_upper_edge_the_word_stands_under_its_ring():
    place = place_beside(QRectF(300, 2, 30, 30), PLATE, ROOM, [])

    assert place.top() > 32


def test_a_word_covers_no_other_ring():
    above = QRectF(300, 118, 30, 30)

    place = place_beside(QRectF(300, 150, 30, 30), PLATE, ROOM, [above])

    assert not place.intersects(above)
    assert ROOM.contains(place)


def test_where_everything_is_taken_the_word_is_still_said():
    assert ROOM.contains(place_beside(QRectF(300, 150, 30, 30), PLATE, ROOM, [ROOM]))
