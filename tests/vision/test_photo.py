"""A photo's bytes become pixels, or a sentence; nothing of a hostile file gets further than that."""

import struct
import zlib
from datetime import datetime, timedelta
from io import BytesIO
from pathlib import Path

import cv2
import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL import ExifTags, Image, ImageCms, ImageOps, TiffImagePlugin

import vision.photo
from tests.vision.profiles import wide_gamut_profile
from vision.photo import (
    Photo,
    PhotoRefused,
    decode_photo,
    grey,
    in_srgb,
    preview,
    read_photo,
    stored_points,
    upright_points,
)
from vision.reason import Reason

FORMATS = Path(__file__).parents[1] / "photos" / "formats"


def a_picture(width: int = 96, height: int = 64) -> Image.Image:
    """No two corners alike: green top left, red top right, blue bottom right, white bottom left."""
    image = Image.new("RGB", (width, height), (90, 80, 70))
    half = (width // 2, height // 2)
    image.paste((0, 180, 0), (0, 0, *half))
    image.paste((200, 0, 0), (half[0], 0, width, half[1]))
    image.paste((0, 0, 220), (*half, width, height))
    image.paste((240, 240, 240), (0, half[1], half[0], height))
    return image


def file_of(image: Image.Image, kind: str = "PNG", **settings) -> bytes:
    out = BytesIO()
    image.save(out, kind, **settings)
    return out.getvalue()


def a_photo(image: Image.Image | None = None, kind: str = "PNG", **settings) -> Photo:
    return decode_photo(file_of(image or a_picture(), kind, **settings), "tray.png")


def exif_with(**tags) -> Image.Exif:
    exif = Image.Exif()
    inner = exif.get_ifd(ExifTags.IFD.Exif)
    for name, value in tags.items():
        tag = ExifTags.Base[name]
        (exif if tag in (0x0112, 0x010F, 0x0110) else inner)[tag] = value
    return exif


def png_of(width: int, height: int, bits: int, colour: int, rows: bytes) -> bytes:
    """A PNG written by hand; `rows` are the filtered rows."""

    def chunk(kind: bytes, body: bytes) -> bytes:
        return struct.pack(">I", len(body)) + kind + body + struct.pack(">I", zlib.crc32(kind + body))

    header = struct.pack(">IIBBBBB", width, height, bits, colour, 0, 0, 0)
    body = chunk(b"IHDR", header) + chunk(b"IDAT", zlib.compress(rows, 9)) + chunk(b"IEND", b"")
    return b"\x89PNG\r\n\x1a\n" + body


def outcome(data: bytes) -> Photo | Reason:
    try:
        return decode_photo(data, "noise")
    except PhotoRefused as refused:
        return refused.reason


def why_refused(data: bytes) -> Reason:
    with pytest.raises(PhotoRefused) as refused:
        decode_photo(data, "tray.jpg")
    return refused.value.reason


# what is refused


def test_an_empty_file_says_so():
    assert why_refused(b"") is Reason.EMPTY


def test_text_under_a_picture_s_name_is_no_picture():
    assert why_refused(b"sown on Monday, 35 g") is Reason.NO_PICTURE


@pytest.mark.parametrize("kind", ["JPEG", "PNG", "TIFF", "WEBP"])
@pytest.mark.parametrize("share", [0.05, 0.5, 0.9])
def test_a_file_that_is_cut_short_is_never_half_used(kind, share):
    noise = np.random.default_rng(0).integers(0, 255, (80, 120, 3), np.uint8)
    data = file_of(Image.fromarray(noise), kind)

    assert why_refused(data[: int(share * len(data))]) is Reason.CUT_SHORT


def test_a_cut_heif_is_refused():
    data = (FORMATS / "deep.heif").read_bytes()

    assert why_refused(data[: len(data) // 2]) is Reason.CUT_SHORT


def test_a_small_file_that_would_unfold_to_900_megapixels_is_refused_before_it_unfolds():
    bomb = png_of(30_000, 30_000, 1, 0, b"\0" * (1 + 30_000 // 8) * 200)  # the rest of its rows never comes

    assert why_refused(bomb) is Reason.TOO_MANY_PIXELS


def test_a_picture_just_over_the_limit_is_refused_too():
    assert why_refused(png_of(10_001, 10_000, 8, 2, b"\0")) is Reason.TOO_MANY_PIXELS


@pytest.mark.parametrize("kind", ["GIF", "BMP", "PPM"])
def test_other_kinds_of_picture_are_named_as_such(kind):
    assert why_refused(file_of(a_picture(), kind)) is Reason.KIND


def test_a_tiff_of_fractions_of_light_is_another_kind_of_picture_and_not_damaged():
    fractions = cv2.imencode(".tif", np.full((200, 300, 3), 0.5, np.float32))[1].tobytes()

    assert why_refused(fractions) is Reason.KIND
    assert why_refused(fractions[:40]) is Reason.CUT_SHORT


@pytest.mark.parametrize("tag", [{50706: b"\1\4\0\0"}, {254: 1}], ids=["DNG", "another maker's"])
def test_the_small_preview_in_a_camera_s_raw_file_is_not_taken_for_the_photo(tag):
    """Tags of TIFF 6.0 (254, NewSubfileType: 1 is a reduced picture) and of DNG (50706, DNGVersion)."""
    told = TiffImagePlugin.ImageFileDirectory_v2()
    for number, value in tag.items():
        told[number] = value

    assert why_refused(file_of(a_picture(), "TIFF", tiffinfo=told)) is Reason.KIND


@pytest.mark.parametrize("mode", ["L", "1", "LA", "I;16"])
def test_a_picture_without_colour_is_refused(mode):
    grey_picture = Image.new("I;16", (96, 64), 40_000) if mode == "I;16" else a_picture().convert(mode)

    assert why_refused(file_of(grey_picture)) is Reason.GREY


def test_a_thumbnail_is_too_small():
    assert why_refused(file_of(a_picture(96, 63))) is Reason.TOO_SMALL


def test_a_jpeg_that_hides_how_its_colours_are_coded_is_refused():
    data = file_of(a_picture().convert("CMYK"), "JPEG")
    at = data.index(b"\xff\xee\x00\x0eAdobe")
    cut = data[: at + 2] + b"\x00\x0d" + data[at + 4 : at + 15] + data[at + 16 :]  # its last byte is gone

    assert why_refused(cut) is Reason.CUT_SHORT


def test_a_file_of_more_bytes_than_any_photo_has_is_refused_unread(tmp_path, monkeypatch):
    monkeypatch.setattr(vision.photo, "MOST_BYTES", 100)
    (tmp_path / "tray.png").write_bytes(file_of(a_picture()))

    with pytest.raises(PhotoRefused) as refused:
        read_photo(tmp_path / "tray.png")

    assert refused.value.reason is Reason.TOO_BIG


@pytest.mark.parametrize("name", ["gone.jpg", "."])
def test_a_missing_file_and_a_folder_cannot_be_opened(tmp_path, name):
    with pytest.raises(PhotoRefused) as refused:
        read_photo(tmp_path / name)

    assert refused.value.reason is Reason.UNREADABLE


def test_a_refusal_names_the_file_and_what_to_do():
    with pytest.raises(PhotoRefused, match=r"^tray-0412\.jpg not used: the file is empty: copy it"):
        decode_photo(b"", "tray-0412.jpg")


@given(
    st.binary(max_size=300), st.sampled_from([b"", b"\xff\xd8\xff", b"\x89PNG\r\n\x1a\n", b"II*\0", b"RIFF"])
)
@pytest.mark.filterwarnings("ignore")
def test_no_bytes_whatever_end_in_anything_but_a_photo_or_a_refusal(noise, head):
    assert isinstance(outcome(head + noise), Photo | Reason)


# what is read


@pytest.mark.parametrize("kind", ["PNG", "TIFF", "WEBP"])
def test_lossless_pictures_come_through_to_the_last_code(kind):
    image = Image.fromarray(np.random.default_rng(1).integers(0, 255, (600, 70, 3), np.uint8))

    photo = a_photo(image, kind, **({"lossless": True} if kind == "WEBP" else {}))

    np.testing.assert_array_equal(photo.pixels, np.asarray(image))


def test_pixels_cannot_be_written_to():
    with pytest.raises(ValueError, match="read-only"):
        a_photo().pixels[0, 0] = 0


def test_twelve_bits_a_channel_are_scaled_to_eight_not_cut():
    photo = read_photo(FORMATS / "deep.heif")

    corners = photo.pixels[[0, 0, -1, -1], [0, -1, 0, -1]].astype(int)

    np.testing.assert_allclose(corners, [(0, 0, 255), (255, 0, 0), (0, 255, 255), (255, 255, 0)], atol=5)


def test_sixteen_bits_a_channel_are_scaled_to_eight_not_cut():
    row = b"\0" + struct.pack(">HHH", 0x4000, 0x8000, 0xFFFF) * 64

    photo = decode_photo(png_of(64, 64, 16, 2, row * 64), "deep.png")

    assert photo.pixels[10, 10].tolist() == [0x40, 0x80, 0xFF]


def test_printing_inks_are_converted_with_the_right_polarity_and_noted():
    image = Image.new("CMYK", (96, 64), (0, 255, 255, 0))  # magenta and yellow ink: red

    photo = a_photo(image, "JPEG", quality=95)

    assert photo.pixels[30, 30].tolist() == pytest.approx([255, 0, 0], abs=3)
    assert photo.notes == (Reason.INKS,)


def test_transparency_and_palettes_are_no_obstacle():
    clear, few = a_picture().convert("RGBA"), a_picture().convert("P", palette=Image.Palette.ADAPTIVE)

    np.testing.assert_array_equal(a_photo(clear).pixels, np.asarray(a_picture()))
    np.testing.assert_array_equal(a_photo(few).pixels, np.asarray(few.convert("RGB")))


def test_of_several_pictures_in_a_file_the_first_is_taken():
    other = Image.new("RGB", (96, 64), (1, 2, 3))

    photo = a_photo(a_picture(), "MPO", save_all=True, append_images=[other], quality=95)

    assert photo.pixels[10, 10].tolist() == pytest.approx([0, 180, 0], abs=4)


def test_a_photo_is_known_by_the_digest_of_its_bytes():
    one, same, other = a_photo(), a_photo(), a_photo(a_picture(97, 64))

    assert one.digest == same.digest != other.digest
    assert len(one.digest) == 64


def test_grey_has_the_stored_size():
    assert grey(a_photo(exif=exif_with(Orientation=6))).shape == (64, 96)


# which way is up


@pytest.mark.parametrize("orientation", range(1, 9))
def test_every_orientation_stands_upright_as_the_reference_reader_has_it(orientation):
    data = file_of(a_picture(), exif=exif_with(Orientation=orientation))
    reference = ImageOps.exif_transpose(Image.open(BytesIO(data)))  # Pillow's own

    photo = decode_photo(data, "turned.png")

    np.testing.assert_array_equal(preview(photo, 1000), np.asarray(reference))
    assert photo.size_upright == reference.size


def test_an_orientation_that_does_not_exist_is_ignored():
    assert a_photo(exif=exif_with(Orientation=9)).turns == 0


@pytest.mark.parametrize("orientation", [1, 3, 6, 8])
def test_a_point_of_the_stored_photo_is_found_in_the_upright_one(orientation):
    photo = a_photo(exif=exif_with(Orientation=orientation))
    upright = preview(photo, 1000)

    ((x, y),) = upright_points(photo, [(10.5, 20.5)])  # middle of the pixel in column 10, row 20

    assert (x % 1, y % 1) == (0.5, 0.5)
    assert upright[int(y), int(x)].tolist() == photo.pixels[20, 10].tolist()


@given(st.integers(0, 3), st.floats(-50, 200), st.floats(-50, 200))
def test_points_turned_there_and_back_are_the_same(turns, x, y):
    photo = a_photo(exif=exif_with(Orientation=(1, 6, 3, 8)[turns]))

    ((back_x, back_y),) = stored_points(photo, upright_points(photo, [(x, y)]))

    assert (back_x, back_y) == pytest.approx((x, y), abs=1e-9)


def test_a_preview_is_shrunk_to_its_longer_side_and_never_enlarged():
    photo = a_photo(a_picture(400, 200))

    assert preview(photo, 100).shape == (50, 100, 3)
    assert preview(photo, 1000).shape == (200, 400, 3)


# colour profiles


def p3_in_srgb(code: tuple[int, int, int]) -> np.ndarray:
    """The same by the primaries alone: P3 (.680 .320, .265 .690, .150 .060) and sRGB, both with D65."""

    def matrix(primaries: list[tuple[float, float]]) -> np.ndarray:
        columns = np.array([[x / y, 1, (1 - x - y) / y] for x, y in primaries]).T
        white = np.array([0.3127 / 0.3290, 1, (1 - 0.3127 - 0.3290) / 0.3290])
        return columns * np.linalg.solve(columns, white)

    v = np.array(code) / 255
    light = np.where(v <= 0.04045, v / 12.92, ((v + 0.055) / 1.055) ** 2.4)
    there = matrix([(0.680, 0.320), (0.265, 0.690), (0.150, 0.060)])
    here = matrix([(0.640, 0.330), (0.300, 0.600), (0.150, 0.060)])
    light = np.clip(np.linalg.solve(here, there @ light), 0, 1)
    return 255 * np.where(light <= 0.0031308, 12.92 * light, 1.055 * light ** (1 / 2.4) - 0.055)


def test_wide_gamut_colours_are_converted_as_their_primaries_say():
    image = Image.new("RGB", (96, 64), (120, 200, 80))

    photo = a_photo(image, icc_profile=wide_gamut_profile())
    converted = in_srgb(photo.pixels, photo.profile)

    assert photo.pixels[0, 0].tolist() == [120, 200, 80]  # not yet
    np.testing.assert_allclose(converted[5, 5], p3_in_srgb((120, 200, 80)), atol=1.0)
    np.testing.assert_array_equal(preview(photo, 1000)[5, 5], converted[5, 5])


def test_a_profile_that_says_srgb_is_not_carried_along():
    srgb = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()

    assert a_photo(icc_profile=srgb).profile is None


def test_a_broken_profile_is_ignored():
    assert a_photo(icc_profile=b"not a profile").profile is None


# when and with what


def test_time_offset_and_focal_length_come_from_the_camera():
    exif = exif_with(
        DateTimeOriginal="2026:03:04 07:15:30", OffsetTimeOriginal="+02:00", FocalLengthIn35mmFilm=27
    )

    photo = a_photo(kind="JPEG", exif=exif)

    assert photo.taken_at == datetime(2026, 3, 4, 7, 15, 30)
    assert photo.utc_offset == timedelta(hours=2)
    assert photo.focal_35mm == 27


@pytest.mark.parametrize(
    "time", ["0000:00:00 00:00:00", "1980:01:01 00:00:00", "    :  :     :  :  ", "noon"]
)
def test_a_clock_that_was_never_set_gives_no_time(time):
    assert a_photo(kind="JPEG", exif=exif_with(DateTimeOriginal=time)).taken_at is None


def test_a_photo_without_any_notes_of_its_camera_is_as_good():
    photo = a_photo()

    assert (photo.taken_at, photo.utc_offset, photo.focal_35mm, photo.camera) == (None, None, None, None)


def test_the_camera_s_name_is_plain_text_of_bounded_length():
    exif = exif_with(Make="Pinhole\x07", Model="Box\n" + 200 * "x")

    camera = a_photo(kind="JPEG", exif=exif).camera

    assert camera is not None
    assert camera.startswith("Pinhole Box")
    assert camera.isprintable()
    assert len(camera) <= 80


@pytest.mark.parametrize(
    ("make", "model", "camera"),
    [
        ("Pinhole", "Box 2", "Pinhole Box 2"),
        ("PINHOLE", "Pinhole Box 2", "Pinhole Box 2"),  # the model names its maker itself
        ("Pinhole  \0", " Box\t2", "Pinhole Box 2"),
        ("Pinhole", None, "Pinhole"),
        (None, "Box 2", "Box 2"),
        ("   ", "\0\0", None),
    ],
)
def test_a_camera_is_called_by_maker_and_model_or_not_at_all(make, model, camera):
    named = {name: value for name, value in (("Make", make), ("Model", model)) if value is not None}

    assert a_photo(kind="JPEG", exif=exif_with(**named)).camera == camera


@pytest.mark.parametrize(
    ("serial", "camera"),
    [
        ("0123456789", "Pinhole Box …6789"),  # Exif 2.31, tag 0xA431 BodySerialNumber: text, any length
        ("B7", "Pinhole Box …B7"),
        ("12345678\0\0", "Pinhole Box …5678"),
        ("00000000", "Pinhole Box"),  # never set
        ("  ", "Pinhole Box"),
    ],
)
def test_two_cameras_of_one_model_are_told_apart_by_the_end_of_their_number(serial, camera):
    exif = exif_with(Make="Pinhole", Model="Box", BodySerialNumber=serial)

    assert a_photo(kind="JPEG", exif=exif).camera == camera


def test_a_number_without_a_model_names_no_camera_and_a_long_model_keeps_its_number():
    assert a_photo(kind="JPEG", exif=exif_with(BodySerialNumber="0123456789")).camera is None

    camera = a_photo(kind="JPEG", exif=exif_with(Model=100 * "x", BodySerialNumber="0123456789")).camera

    assert camera is not None
    assert len(camera) == 80
    assert camera.endswith("x …6789")


def test_where_a_photo_was_taken_goes_no_further_than_the_file():
    exif = exif_with(Model="Box")
    exif.get_ifd(ExifTags.IFD.GPSInfo).update({1: "N", 2: (51.0, 28.0, 38.25)})

    photo = a_photo(kind="JPEG", exif=exif)

    told = [value for name in Photo.__slots__ if name != "pixels" for value in (getattr(photo, name),)]
    assert "38.25" not in repr(told)
    assert "GPS" not in repr(told)


@pytest.mark.filterwarnings("ignore:Corrupt EXIF data")  # Pillow says so; a grower has no use for it
def test_broken_metadata_does_not_cost_the_photo():
    assert a_photo(kind="JPEG", exif=b"Exif\0\0MM\0*\0\0\0\x08\xff\xff").size_upright == (96, 64)
