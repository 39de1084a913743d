"""CSV files of loggers and scales."""

import time
from dataclasses import replace
from datetime import date, datetime
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from data.logs.cells import number_in
from data.logs.columns import ColumnAs, Role, unit_in
from data.logs.readas import ReadAs
from data.logs.sheet import LogRefused, LogSheet, read_log
from data.logs.times import DateOrder
from data.readings import ReadingKind

TODAY = date(2026, 3, 11)
BERLIN = ZoneInfo("Europe/Berlin")
AIR, MEDIUM, RH, WEIGHT = (
    ReadingKind.AIR_TEMPERATURE,
    ReadingKind.MEDIUM_TEMPERATURE,
    ReadingKind.HUMIDITY,
    ReadingKind.WEIGHT,
)

LOGGER = """Device;L-17
Serial;0042

Zeit;Temperatur (°C);Feuchte (%)
02.03.2026 21:40;20,5;81,2
02.03.2026 21:50;20,4;82
03.03.2026 00:10;19,9;140
03.03.2026 00:20;;83
"""


def read(text, encoding="utf-8", **how):
    sheet = read_log(text.encode(encoding), "log.csv", today=TODAY, rack=BERLIN, **how)
    assert isinstance(sheet, LogSheet), sheet
    return sheet


def kinds(sheet):
    return [column.kind for column in sheet.read_as.columns if column.role is Role.READING]


def test_a_logger_with_lines_before_the_table_and_decimal_commas():
    sheet = read(LOGGER)

    assert (sheet.read_as.delimiter, sheet.read_as.decimal, sheet.read_as.first_line) == (";", ",", 5)
    assert sheet.headings == ("Zeit", "Temperatur (°C)", "Feuchte (%)")
    assert sheet.readings[0][:4] == (5, datetime(2026, 3, 2, 21, 40), AIR, 20.5)
    assert [(one.kind, one.value) for one in sheet.readings if one.line == 6] == [(AIR, 20.4), (RH, 82.0)]


def test_a_bad_cell_is_named_and_the_rest_of_its_row_is_kept():
    sheet = read(LOGGER)

    assert [(one.line, one.text, one.reason) for one in sheet.bad] == [
        (7, "140", "humidity can be 0 to 100 %; 140 was given.")
    ]
    assert [one.value for one in sheet.readings if one.line == 7] == [19.9]


def test_an_empty_cell_is_no_reading_and_no_mistake():
    assert [one.kind for one in read(LOGGER).readings if one.line == 8] == [RH]


def test_what_was_found_out_about_dates_is_said():
    assert read(LOGGER).notes == (
        "Dates are read as day, month, year: so the days follow each other, and none lies ahead.",
        "Times are taken as the rack's own clock shows them.",
    )


def test_without_a_place_it_asks_for_one():
    sheet = read(LOGGER)

    assert [one.text for one in sheet.questions] == ["Of which tray or shelf are these readings?"]
    assert not sheet.is_settled

    placed = read(LOGGER, read_as=replace(sheet.read_as, shelf="upper"))

    assert placed.is_settled
    assert {one.shelf for one in placed.readings} == {"upper"}
    assert [one[:4] for one in placed.readings] == [one[:4] for one in sheet.readings]


def test_one_american_day_is_asked_about_with_both_readings():
    text = "Date,Time,Temp (°F),RH\n3/2/2026,9:40 PM,68.0,80\n3/2/2026,9:50 PM,68.2,81\n"

    question = read(text).questions[0]

    assert question.text == "Which day is 3/2/2026?"
    assert [one.text for one in question.choices] == ["03 February 2026", "02 March 2026"]
    answered = read(text, read_as=question.choices[1].read_as)
    assert answered.readings[0][:4] == (2, datetime(2026, 3, 2, 21, 40), AIR, pytest.approx(20))
    assert answered.read_as.date_order is DateOrder.MDY


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "utf-16-le", "utf-16-be", "cp1252"])
def test_letters_in_any_of_the_usual_codes(encoding):
    assert read(LOGGER, encoding).headings[1] == "Temperatur (°C)"


@pytest.mark.parametrize("delimiter", [";", "\t", "|"])
def test_delimiters(delimiter):
    sheet = read(LOGGER.replace(";", delimiter))

    assert sheet.read_as.delimiter == delimiter
    assert len(sheet.readings) == 6


def test_commas_between_and_points_in_numbers():
    sheet = read(LOGGER.replace(",", ".").replace(";", ","))

    assert (sheet.read_as.delimiter, sheet.read_as.decimal) == (",", ".")
    assert len(sheet.readings) == 6


def test_decimal_commas_within_quotes():
    sheet = read('time,temp\n"2026-03-02 10:00","21,5"\n"2026-03-02 10:10","21,6"\n')

    assert [one.value for one in sheet.readings] == [21.5, 21.6]


def test_decimal_commas_without_quotes_between_commas_are_joined_again():
    sheet = read("time,temp C,rh\n2026-03-02 09:00,20,5,81,2\n2026-03-02 09:10,20,6,82,0\n")

    assert [one.value for one in sheet.readings] == [20.5, 81.2, 20.6, 82.0]


def test_a_column_for_each_tray():
    sheet = read("time;A1;A2\n2026-03-02 09:00;812;798\n2026-03-02 10:00;808;795\n", trays={"A1", "A2"})

    assert sheet.is_settled
    assert [(one.tray, one.value) for one in sheet.readings] == [
        ("A1", 812),
        ("A2", 798),
        ("A1", 808),
        ("A2", 795),
    ]


def test_a_scale_that_writes_its_state_before_the_weight():
    sheet = read("ST,GS,+  812.5 g,2026/03/02,09:00:10\nST,GS,+  811.5 g,2026/03/02,10:00:10\n")

    assert [(one.kind, one.value) for one in sheet.readings] == [(WEIGHT, 812.5), (WEIGHT, 811.5)]


def test_a_clock_that_runs_ahead_is_noted():
    sheet = read("time,temp C\n2031-03-02 09:00,20\n2031-03-02 09:10,20\n")

    assert sheet.notes[-1] == "Readings go on until 02 March 2031: is the clock of the logger right?"


def test_a_line_of_units_under_the_headings():
    sheet = read("Time,T air,Hum\n,°F,%\n2026-03-02 10:00,68,80\n2026-03-02 10:10,69,80\n")

    assert sheet.headings == ("Time", "T air (°F)", "Hum (%)")
    assert kinds(sheet) == [AIR, RH]
    assert sheet.readings[0].value == pytest.approx(20)


def test_no_headings_and_seconds_since_1970():
    sheet = read("1772484000\t20.5 °C\t80 %\n1772484600\t20.6 °C\t81 %\n")

    assert kinds(sheet) == [AIR, RH]
    assert sheet.readings[0].at == datetime(2026, 3, 2, 21, 40)  # 20:40 UTC


def test_a_scale_in_long_form_with_trays_and_mixed_units():
    text = "tray,weight,when\nA1,812 g,2026-03-02T21:40:00+01:00\nA2,28.6 oz,2026-03-02T20:41:00Z\n"

    sheet = read(text, trays={"A1", "A2"})

    assert sheet.is_settled
    assert [(one.tray, one.value) for one in sheet.readings] == [
        ("A1", 812),
        ("A2", pytest.approx(810.796, abs=1e-3)),
    ]
    assert [one.at.minute for one in sheet.readings] == [40, 41]
    assert {one.at.hour for one in sheet.readings} == {21}


def test_a_column_of_shelves_is_told_by_its_names():
    text = "when,where,temp\n2026-03-02 10:00,upper,21\n2026-03-02 10:00,lower,20\n"

    sheet = read(text, shelves={"upper", "lower"})

    assert [(one.shelf, one.value) for one in sheet.readings] == [("upper", 21), ("lower", 20)]


def test_two_temperatures_of_one_place_are_asked_about():
    text = "time,temp 1 (°C),temp 2 (°C)\n2026-03-02 10:00,21,19\n2026-03-02 10:10,21,19\n"

    question = read(text).questions[0]

    assert question.text == "Columns 2, 3 are all air temperature of one place: which one is it?"
    assert [one.value for one in read(text, read_as=question.choices[1].read_as).readings] == [19, 19]


def test_a_probe_in_the_medium_is_no_air():
    assert kinds(read("time,air temp C,medium temp C\n2026-03-02 10:00,21,19\n2026-03-02 10:10,21,19\n")) == [
        AIR,
        MEDIUM,
    ]


def test_extremes_are_not_taken_for_readings():
    text = "time,temp C,temp min C,temp max C\n2026-03-02 10:00,21,19,24\n2026-03-02 10:10,21,19,24\n"

    assert [one.value for one in read(text).readings] == [21, 21]


def test_a_sensor_in_wet_air_that_says_a_little_over_100_means_100():
    assert [
        one.value for one in read("time,rh %\n2026-03-02 10:00,102.4\n2026-03-02 10:10,99\n").readings
    ] == [100, 99]


def test_dew_point_and_battery_are_not_used():
    assert kinds(
        read("time,temp C,dew point C,battery %\n2026-03-02 10:00,21,19,80\n2026-03-02 10:10,21,19,80\n")
    ) == [AIR]


def test_a_temperature_without_unit_is_told_by_its_size_or_asked():
    def unit_of(middle):
        sheet = read(f"time,temp\n2026-03-02 10:00,{middle}\n2026-03-02 10:10,{middle}\n")
        return sheet.read_as.columns[1].unit, [one.text for one in sheet.questions]

    assert unit_of(21)[0] == "C"
    assert unit_of(70)[0] == "F"
    unit, questions = unit_of(43)
    assert unit == ""
    assert questions[0] == "In which unit is column 2, air temperature? Its middle value is 43."


def test_small_weights_without_unit_are_asked_about():
    text = "time,weight\n2026-03-02 10:00,28.6\n2026-03-02 10:10,28.5\n"

    question = read(text).questions[0]

    assert [one.text for one in question.choices] == ["g", "kg", "oz", "lb"]
    assert read(text, read_as=question.choices[2].read_as).readings[0].value == pytest.approx(
        810.796, abs=1e-3
    )


def test_a_person_can_give_a_column_another_meaning():
    sheet = read(LOGGER)
    column = ColumnAs(role=Role.READING, kind=MEDIUM, unit="C", tray="A1")

    again = read(LOGGER, read_as=sheet.read_as.with_column(1, column))

    assert {(one.kind, one.tray) for one in again.readings} == {(MEDIUM, "A1"), (RH, None)}


def test_how_it_was_read_is_kept_as_text_and_comes_back():
    read_as = replace(read(LOGGER).read_as, zone="Europe/Berlin", shelf="upper")

    assert ReadAs.from_text(read_as.text) == read_as


def test_the_loggers_zone_is_given_by_the_person():
    sheet = read(LOGGER)

    moved = read(LOGGER, read_as=replace(sheet.read_as, zone="UTC"))

    assert moved.readings[0].at == datetime(2026, 3, 2, 22, 40)


@pytest.mark.parametrize(
    ("heading", "zone", "hour"),
    [
        ("time", None, 10),
        ("time (UTC)", "UTC", 11),
        ("time, GMT-05:00", "-05:00", 16),
        ("time (CET)", None, 10),
    ],
)
def test_a_zone_in_the_heading_is_taken_and_said(heading, zone, hour):
    sheet = read(f'"{heading}";temp C\n2026-03-02 10:00;21\n2026-03-02 10:10;21\n')

    assert sheet.read_as.zone == zone
    assert sheet.readings[0].at.hour == hour
    assert ("rack's own clock" in sheet.notes[0]) == (zone is None)


def test_times_that_say_their_zone_are_said_to():
    sheet = read("time,temp C\n2026-03-02T10:00Z,21\n2026-03-02T10:10Z,21\n")

    assert sheet.notes == ("Each time says its zone; it is kept as the rack's clock shows it.",)


def test_a_zone_that_is_none_is_refused():
    sheet = read(LOGGER)

    refused = read_log(
        LOGGER.encode(), "log.csv", today=TODAY, read_as=replace(sheet.read_as, zone="Mars/Station")
    )

    assert refused.sentence == "There is no time zone “Mars/Station”: type one such as Europe/Paris."


def test_the_night_the_clocks_go_forward_is_named():
    text = "time,temp C\n2026-03-29 01:50,21\n2026-03-29 02:10,21\n2026-03-29 03:10,21\n"

    bad = read_log(text.encode(), "x", today=date(2026, 4, 1), rack=BERLIN).bad

    assert [one.line for one in bad] == [3]
    assert bad[0].reason.startswith("The clocks were set forward")


def test_the_night_the_clocks_go_back_is_named():
    text = "time,temp C\n" + "".join(f"2026-10-25 02:{m},{20 + k}\n" for k in (0, 1) for m in (10, 40))

    sheet = read_log(text.encode(), "x", today=date(2026, 11, 1), rack=BERLIN)

    assert [one.value for one in sheet.readings] == [20, 20]
    assert [one.line for one in sheet.bad] == [4, 5]
    assert "02:10 came twice: the first is taken, in line 2" in sheet.bad[0].reason
    assert "came twice" in sheet.notes[-1]


def test_the_same_time_twice_is_named():
    text = "time,temp C\n2026-03-02 10:00,21\n2026-03-02 10:00,22\n2026-03-02 10:10,22\n"

    assert [(one.line, one.reason) for one in read(text).bad] == [
        (3, "There is a reading of the same time already, in line 2: the first is taken.")
    ]


def test_rows_without_sense_are_named_with_their_lines():
    rows = ["logger restarted", "2026-02-30 10:00,21", "2026-03-02 10:20,ERR", "2026-03-02 10:30,22"]
    text = "\n".join(["time,temp C", "2026-03-02 10:00,21", *rows])

    assert [(one.line, one.reason) for one in read(text).bad] == [
        (3, "“logger restarted” is no date and time."),
        (4, "“2026-02-30 10:00” is no day of the calendar."),
        (5, "“ERR” is no number."),
    ]


def test_a_quote_that_is_never_closed_eats_one_row_at_most():
    text = 'time,temp C,note\n2026-03-02 10:00,21,"drip\n2026-03-02 10:10,22,\n2026-03-02 10:20,23,\n'

    assert len(read(text).readings) == 3


def test_days_without_a_time_stand_at_noon():
    sheet = read("day;weight g\n2026-03-02;812\n2026-03-03;790\n")

    assert sheet.readings[0].at == datetime(2026, 3, 2, 12)
    assert "There is no time of day: noon is taken." in sheet.notes


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (b"", "The file is empty."),
        (b"  \n \n", "The file is empty."),
        (
            b"\x89PNG\r\n\x1a\n" + bytes(range(256)) * 20,
            "This is no text file: choose the CSV or text file of the logger.",
        ),
        (b"dear diary\nthe peas are up\n", "There is no table in the file: no line has a time and a number."),
        (b"a;b\n1;2\n3;4\n", "No line of the file begins with a date or time that can be read."),
    ],
)
def test_what_is_no_log_is_refused_with_a_sentence(data, words):
    refused = read_log(data, "x", today=TODAY)

    assert isinstance(refused, LogRefused)
    assert refused.sentence == words


@pytest.mark.parametrize(
    ("cell", "decimal", "number"),
    [
        ("21.5", ".", 21.5),
        ("21,5", ",", 21.5),
        ("21,5", ".", None),  # never 215
        ("1,234.5", ".", 1234.5),
        ("1.234,5", ",", 1234.5),
        ("812 g", ".", 812),
        ("< 5 %", ".", 5),
        ("−4.5", ".", -4.5),
        ("21.5 V", ".", None),
        ("1_000", ".", None),
        ("inf", ".", None),
        ("", ".", None),
    ],
)
def test_numbers_of_cells(cell, decimal, number):
    assert number_in(cell, decimal) == number


@pytest.mark.parametrize(
    ("text", "unit"),
    [
        ("Temp (°F)", "F"),
        ("temp_c", "C"),
        ("RH [%]", "%"),
        ("weight, oz", "oz"),
        ("812g", "g"),
        ("Temperature", ""),
    ],
)
def test_units_of_headings(text, unit):
    assert unit_in(text) == unit


def test_a_quarter_of_a_hundred_thousand_rows_takes_less_than_a_quarter_of_three_seconds():
    rows = [
        f"{2 + k // 1440:02d}.03.2026 {k // 60 % 24:02d}:{k % 60:02d}:{s:02d};{20 + k % 5},5;{60 + k % 30},2"
        for k in range(3_125)
        for s in range(0, 60, 8)
    ]
    data = ("Zeit;Temperatur °C;Feuchte %\n" + "\n".join(rows)).encode()

    begun = time.process_time()
    sheet = read_log(data, "big", today=date(2026, 3, 12))

    assert time.process_time() - begun < 0.75
    assert len(sheet.readings) == 50_000
    assert not sheet.bad


# --- whatever is written, it is read, named or refused

cells = st.one_of(
    st.sampled_from(
        ["", "21,5", "21.5", "812 g", "ERR", "2026-03-02 10:00", "3/2/2026", "9:40 PM", "68 °F", '"', "A1"]
    ),
    st.text(max_size=12),
)


@settings(deadline=None, max_examples=150)
@given(st.lists(st.lists(cells, min_size=1, max_size=5), max_size=12), st.sampled_from([",", ";", "\t", "|"]))
def test_any_table_is_read_or_refused(rows, delimiter):
    text = "\n".join(delimiter.join(row) for row in rows)

    sheet = read_log(text.encode(errors="replace"), "x", today=TODAY)

    if isinstance(sheet, LogSheet):
        assert len({one[1:3] + one[4:] for one in sheet.readings}) == len(sheet.readings)
        lines = text.count("\n") + 20 * (text.count("\r") + 1) + 20
        assert all(1 <= one.line <= lines for one in (*sheet.readings, *sheet.bad))
    else:
        assert sheet.sentence


@settings(deadline=None, max_examples=100)
@given(st.binary(max_size=400))
def test_any_bytes_are_read_or_refused(data):
    assert isinstance(read_log(data, "x", today=TODAY), LogSheet | LogRefused)


samples = st.lists(
    st.tuples(st.integers(0, 60 * 24 * 40), st.integers(-100, 450), st.integers(0, 1000)),
    min_size=3,
    max_size=40,
    unique_by=lambda one: one[0],
)
forms = st.sampled_from(["%Y-%m-%d %H:%M", "%d.%m.%Y %H:%M", "%Y/%m/%dT%H:%M:00", "%d %b %Y %H:%M"])


@settings(deadline=None, max_examples=60)
@given(samples, forms, st.sampled_from([(";", ","), (";", "."), ("\t", ","), (",", "."), ("|", ".")]))
def test_what_a_logger_writes_comes_back(values, form, signs):
    delimiter, decimal = signs
    begin = datetime(2026, 1, 20).timestamp()
    rows, expected = [], []
    for minutes, warm, humid in values:
        at = datetime.fromtimestamp(begin) + (datetime(2026, 1, 1, minute=1) - datetime(2026, 1, 1)) * minutes
        numbers = [f"{n / 10:.1f}".replace(".", decimal) for n in (warm, humid)]
        rows.append(delimiter.join([at.strftime(form), *numbers]))
        expected += [(at, AIR, warm / 10), (at, RH, humid / 10)]
    text = delimiter.join(["Time", "Temp (°C)", "RH (%)"]) + "\n" + "\n".join(rows)

    sheet = read_log(text.encode(), "x", today=date(2026, 3, 11), rack=ZoneInfo("UTC"))

    if sheet.read_as.date_order is None:  # rightly asked
        asked = next(
            choice for choice in sheet.questions[0].choices if choice.read_as.date_order is DateOrder.DMY
        )
        sheet = read_log(
            text.encode(), "x", today=date(2026, 3, 11), rack=ZoneInfo("UTC"), read_as=asked.read_as
        )
    assert [(one.at, one.kind, one.value) for one in sheet.readings] == [
        (at, kind, pytest.approx(value)) for at, kind, value in expected
    ]
    assert not sheet.bad
