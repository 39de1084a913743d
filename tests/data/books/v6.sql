BEGIN TRANSACTION;
CREATE TABLE "_sqlite_migrations" (
   "id" INTEGER PRIMARY KEY,
   "migration_set" TEXT,
   "name" TEXT,
   "applied_at" TEXT
);
INSERT INTO "_sqlite_migrations" VALUES(1,'book','m001_first_tables','2026-11-25 15:29:15.887305+00:00');
INSERT INTO "_sqlite_migrations" VALUES(2,'book','m002_doubt_of_coverage','2026-11-25 17:01:35.500908+00:00');
INSERT INTO "_sqlite_migrations" VALUES(3,'book','m003_book_and_trial','2026-11-25 19:08:48.047892+00:00');
INSERT INTO "_sqlite_migrations" VALUES(4,'book','m004_share_of_bed','2026-11-29 19:43:26.276570+00:00');
INSERT INTO "_sqlite_migrations" VALUES(5,'book','m005_camera_of_photo','2026-11-29 22:45:23.366147+00:00');
INSERT INTO "_sqlite_migrations" VALUES(6,'book','m006_packed_scores','2026-11-30 16:29:33.200897+00:00');
CREATE TABLE bench_test (
        id INTEGER PRIMARY KEY,
        kind TEXT NOT NULL CHECK (kind IN ('wetting', 'cooling', 'breakdown')),
        medium INTEGER NOT NULL REFERENCES medium (id),
        tray_type INTEGER REFERENCES tray_type (id),
        seating TEXT CHECK (seating IN ('in the tray', 'on an upturned tray')),
        watering TEXT CHECK (watering IN ('top', 'bottom', 'both')),
        place TEXT NOT NULL DEFAULT '',
        begun_at TEXT NOT NULL,
        note TEXT NOT NULL DEFAULT ''
    ) STRICT
    ;
INSERT INTO "bench_test" VALUES(1,'wetting',1,1,'in the tray','bottom','','2026-03-02T08:00:00','');
CREATE TABLE block (
        id INTEGER PRIMARY KEY,
        trial INTEGER REFERENCES trial (id),
        name TEXT NOT NULL,
        note TEXT NOT NULL DEFAULT '',
        UNIQUE (trial, name)
    ) STRICT
    ;
INSERT INTO "block" VALUES(1,1,'1','');
CREATE TABLE change (
        id INTEGER PRIMARY KEY,
        made_at TEXT NOT NULL,
        text TEXT NOT NULL,
        images TEXT NOT NULL,
        undone INTEGER NOT NULL DEFAULT 0 CHECK (undone IN (0, 1))
    ) STRICT
    ;
INSERT INTO "change" VALUES(1,'2026-11-25T15:29:15','3 trays added','[{"table": "crop", "id": 1, "before": null, "after": {"id": 1, "name": "broccoli", "variety": "", "soak_hours": null, "blackout_days": null, "cut_from_day": null, "cut_to_day": null, "note": ""}}, {"table": "trial", "id": 1, "before": null, "after": {"id": 1, "name": "t", "question": "", "trusted": null, "margin_points": null, "margin_set_at": null, "began_on": null, "note": ""}}, {"table": "block", "id": 1, "before": null, "after": {"id": 1, "trial": 1, "name": "1", "note": ""}}, {"table": "medium", "id": 1, "before": null, "after": {"id": 1, "name": "coir", "kind": "", "trusted": 0, "note": ""}}, {"table": "seed_lot", "id": 1, "before": null, "after": {"id": 1, "crop": 1, "name": "L-1", "received_on": null, "germination_pct": null, "thousand_seed_g": null, "note": ""}}, {"table": "tray", "id": 1, "before": null, "after": {"id": 1, "code": "A1", "trial": 1, "block": 1, "crop": 1, "medium": 1, "tray_type": 1, "seed_lot": 1, "seating": "in the tray", "sowing_rate_g": null, "soak_hours": null, "sown_at": "2026-03-01T09:00:00", "blackout_from": "2026-03-01T09:00:00", "blackout_to": null, "stacked": 1, "watering": "bottom", "feed": null, "heat_mat": null, "shelf": "A", "position": 1, "light": null, "tag_number": 10, "done_at": null, "note": ""}}, {"table": "tray", "id": 2, "before": null, "after": {"id": 2, "code": "A2", "trial": 1, "block": 1, "crop": 1, "medium": 1, "tray_type": 1, "seed_lot": null, "seating": "in the tray", "sowing_rate_g": null, "soak_hours": null, "sown_at": "2026-03-01T09:00:00", "blackout_from": null, "blackout_to": null, "stacked": null, "watering": null, "feed": null, "heat_mat": null, "shelf": "A", "position": 2, "light": null, "tag_number": 11, "done_at": null, "note": ""}}, {"table": "medium", "id": 2, "before": null, "after": {"id": 2, "name": "peat mix", "kind": "", "trusted": 0, "note": ""}}, {"table": "tray", "id": 3, "before": null, "after": {"id": 3, "code": "B1", "trial": 1, "block": 1, "crop": 1, "medium": 2, "tray_type": 1, "seed_lot": null, "seating": "in the tray", "sowing_rate_g": null, "soak_hours": null, "sown_at": "2026-03-01T09:00:00", "blackout_from": null, "blackout_to": null, "stacked": null, "watering": null, "feed": null, "heat_mat": null, "shelf": "B", "position": 1, "light": null, "tag_number": null, "done_at": null, "note": ""}}]',0);
INSERT INTO "change" VALUES(2,'2026-11-25T15:29:15','not mold on A1','[{"table": "suspect", "id": 1, "before": {"said": null, "said_at": null}, "after": {"said": "not mold", "said_at": "2026-11-25T15:29:15"}}]',0);
CREATE TABLE correction (
        id INTEGER PRIMARY KEY,
        photo INTEGER NOT NULL REFERENCES photo (id),
        kind TEXT NOT NULL CHECK (kind IN ('corners', 'canopy')),
        body TEXT NOT NULL,
        made_at TEXT NOT NULL
    ) STRICT
    ;
INSERT INTO "correction" VALUES(1,1,'corners','[]','2026-03-08T08:00:00');
CREATE TABLE crop (
        id INTEGER PRIMARY KEY,
        name TEXT NOT NULL UNIQUE,
        variety TEXT NOT NULL DEFAULT '',
        soak_hours REAL,
        blackout_days REAL,
        cut_from_day REAL,
        cut_to_day REAL,
        note TEXT NOT NULL DEFAULT ''
    , sowing_rate_g REAL CHECK (sowing_rate_g > 0), stacked INTEGER CHECK (stacked IN (0, 1)), light TEXT, base_c REAL) STRICT
    ;
INSERT INTO "crop" VALUES(1,'broccoli','',NULL,NULL,NULL,NULL,'',NULL,NULL,NULL,NULL);
CREATE TABLE draw (
        id INTEGER PRIMARY KEY,
        plan INTEGER NOT NULL REFERENCES plan (id),
        seed INTEGER NOT NULL,
        body TEXT NOT NULL,
        drawn_at TEXT NOT NULL,
        why TEXT NOT NULL DEFAULT ''
    ) STRICT
    ;
INSERT INTO "draw" VALUES(1,1,7,'[]','2026-03-01T08:10:00','');
CREATE TABLE event (
        id INTEGER PRIMARY KEY,
        tray INTEGER REFERENCES tray (id),
        kind TEXT NOT NULL,
        at TEXT NOT NULL,
        note TEXT NOT NULL DEFAULT ''
    , shelf TEXT) STRICT
    ;
INSERT INTO "event" VALUES(1,1,'watered','2026-03-08T07:00:00','',NULL);
CREATE TABLE eye_round (
        id INTEGER PRIMARY KEY,
        trial INTEGER REFERENCES trial (id),
        rater TEXT NOT NULL,
        seed INTEGER NOT NULL,
        body TEXT NOT NULL,
        begun_at TEXT NOT NULL
    ) STRICT
    ;
INSERT INTO "eye_round" VALUES(1,1,'R',3,'{}','2026-03-08T09:00:00');
CREATE TABLE eye_score (
        id INTEGER PRIMARY KEY,
        tray INTEGER NOT NULL REFERENCES tray (id),
        photo INTEGER REFERENCES photo (id),
        rater TEXT NOT NULL,
        value REAL NOT NULL,
        blind INTEGER NOT NULL CHECK (blind IN (0, 1)),
        given_at TEXT NOT NULL
    , round INTEGER REFERENCES eye_round (id), place INTEGER) STRICT
    ;
INSERT INTO "eye_score" VALUES(1,1,1,'R',7.0,1,'2026-03-08T09:01:00',1,1);
CREATE TABLE heap_photo (
        id INTEGER PRIMARY KEY,
        bench_test INTEGER NOT NULL REFERENCES bench_test (id),
        digest TEXT NOT NULL CHECK (length(digest) = 64),
        suffix TEXT NOT NULL,
        name TEXT NOT NULL,
        taken_at TEXT NOT NULL,
        UNIQUE (bench_test, digest)
    ) STRICT
    ;
INSERT INTO "heap_photo" VALUES(1,1,'bbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbb','.jpg','heap.jpg','2026-03-05T08:00:00');
CREATE TABLE log_file (
        id INTEGER PRIMARY KEY,
        digest TEXT NOT NULL UNIQUE CHECK (length(digest) = 64),
        name TEXT NOT NULL,
        added_at TEXT NOT NULL,
        read_as TEXT NOT NULL
    ) STRICT
    ;
INSERT INTO "log_file" VALUES(1,'aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa','shelf1.csv','2026-03-08T08:00:00','{}');
CREATE TABLE look_answer (
        id INTEGER PRIMARY KEY,
        tray INTEGER NOT NULL REFERENCES tray (id),
        what TEXT NOT NULL,
        since TEXT NOT NULL,
        answer TEXT NOT NULL CHECK (answer IN ('seen', 'tomorrow')),
        urgency INTEGER NOT NULL,
        size REAL,
        answered_on TEXT NOT NULL
    ) STRICT
    ;
INSERT INTO "look_answer" VALUES(1,1,'lags behind','2026-03-07','tomorrow',1,NULL,'2026-03-08');
CREATE TABLE look_entry (
        id INTEGER PRIMARY KEY,
        tray INTEGER NOT NULL REFERENCES tray (id),
        what TEXT NOT NULL,
        since TEXT NOT NULL,
        urgency INTEGER NOT NULL,
        sentence TEXT NOT NULL,
        first_on TEXT NOT NULL,
        last_on TEXT NOT NULL,
        gone_on TEXT,
        gone_why TEXT NOT NULL DEFAULT '',
        UNIQUE (tray, what, since)
    ) STRICT
    ;
INSERT INTO "look_entry" VALUES(1,1,'lags behind','2026-03-07',1,'s','2026-03-07','2026-03-08',NULL,'');
CREATE TABLE material_factor (
        id INTEGER PRIMARY KEY,
        medium INTEGER REFERENCES medium (id),
        name TEXT NOT NULL,
        value REAL,
        low REAL,
        high REAL,
        unit TEXT NOT NULL,
        source TEXT NOT NULL
    , year INTEGER, who TEXT NOT NULL DEFAULT '', entered_at TEXT) STRICT
    ;
INSERT INTO "material_factor" VALUES(1,1,'price',0.8,0.7,0.9,'EUR/tray','typed in',2026,'','2026-03-08T09:00:00');
CREATE TABLE medium (
        id INTEGER PRIMARY KEY,
        name TEXT NOT NULL UNIQUE,
        kind TEXT NOT NULL DEFAULT '',
        trusted INTEGER NOT NULL DEFAULT 0 CHECK (trusted IN (0, 1)),
        note TEXT NOT NULL DEFAULT ''
    , seating TEXT CHECK (seating IN ('in the tray', 'on an upturned tray')), watering TEXT CHECK (watering IN ('top', 'bottom', 'both')), feed TEXT) STRICT
    ;
INSERT INTO "medium" VALUES(1,'coir','',0,'',NULL,NULL,NULL);
INSERT INTO "medium" VALUES(2,'peat mix','',0,'',NULL,NULL,NULL);
CREATE TABLE old_score (
        id INTEGER PRIMARY KEY,
        score INTEGER NOT NULL REFERENCES score (id),
        correction INTEGER REFERENCES correction (id),
        body TEXT NOT NULL,
        replaced_at TEXT NOT NULL
    ) STRICT
    ;
INSERT INTO "old_score" VALUES(1,1,1,'{}','2026-03-08T08:00:00');
CREATE TABLE photo (
        id INTEGER PRIMARY KEY,
        digest TEXT NOT NULL UNIQUE CHECK (length(digest) = 64),
        name TEXT NOT NULL,
        suffix TEXT NOT NULL,
        kept INTEGER NOT NULL CHECK (kept IN (0, 1)),
        added_at TEXT NOT NULL,
        taken_at TEXT NOT NULL,
        taken_from TEXT NOT NULL CHECK (taken_from IN ('camera', 'file')),
        tag_number INTEGER,
        tray INTEGER REFERENCES tray (id),
        matched_by TEXT CHECK (matched_by IN ('tag', 'walk', 'person')),
        needs_corners INTEGER NOT NULL DEFAULT 0 CHECK (needs_corners IN (0, 1)),
        refusal TEXT,
        left_out_at TEXT
    , file_at TEXT, clock_at TEXT, camera TEXT CHECK (camera <> '')) STRICT
    ;
INSERT INTO "photo" VALUES(1,'76b57a562060ad341c6bd7543f4ff83b58f7d4a54d0794416a9f169e3c9158ed','1.jpg','.jpg',1,'2026-11-25T15:29:15','2026-03-08T12:00:00','camera',10,1,'tag',0,NULL,NULL,NULL,NULL,'Pinhole Box 2');
INSERT INTO "photo" VALUES(2,'44e12ebea10883006e27c62ca3199edca93891e47d964562da251ad4bd08cd71','2.jpg','.jpg',1,'2026-11-25T15:29:15','2026-03-08T12:00:00','camera',11,2,'tag',0,'BLURRED',NULL,NULL,NULL,NULL);
INSERT INTO "photo" VALUES(3,'dff55c4c557896d34a195e55285d7f30f095e5c6c1aeba453c676599e7a40df7','3.jpg','.jpg',1,'2026-11-25T15:29:15','2026-03-08T12:00:00','camera',NULL,NULL,NULL,1,NULL,NULL,NULL,NULL,NULL);
CREATE TABLE plan (
        id INTEGER PRIMARY KEY,
        trial INTEGER NOT NULL REFERENCES trial (id),
        body TEXT NOT NULL,
        kept_at TEXT NOT NULL,
        why TEXT NOT NULL DEFAULT ''
    ) STRICT
    ;
INSERT INTO "plan" VALUES(1,1,'{}','2026-03-01T08:00:00','');
CREATE TABLE reading (
        id INTEGER PRIMARY KEY,
        tray INTEGER REFERENCES tray (id),
        shelf TEXT,
        kind TEXT NOT NULL,
        value REAL NOT NULL,
        unit TEXT NOT NULL,
        taken_at TEXT NOT NULL,
        source TEXT NOT NULL DEFAULT 'person',
        note TEXT NOT NULL DEFAULT ''
    , log_file INTEGER REFERENCES log_file (id), bench_test INTEGER REFERENCES bench_test (id)) STRICT
    ;
INSERT INTO "reading" VALUES(1,1,NULL,'weight',812.0,'g','2026-03-08T07:00:00','person','',NULL,NULL);
INSERT INTO "reading" VALUES(2,NULL,'1','air temperature',20.5,'C','2026-03-08T07:00:00','log','',1,NULL);
INSERT INTO "reading" VALUES(3,NULL,NULL,'weight',640.0,'g','2026-03-02T08:00:00','person','',NULL,1);
CREATE TABLE score (
        id INTEGER PRIMARY KEY,
        photo INTEGER NOT NULL REFERENCES photo (id),
        method TEXT NOT NULL,
        made_at TEXT NOT NULL,
        sure INTEGER NOT NULL CHECK (sure IN (0, 1)),
        coverage REAL, green REAL, pale REAL, red REAL,
        cells BLOB NOT NULL CHECK (length(cells) = 144),
        uniformity REAL, low_quarter REAL, variation REAL, clumping REAL,
        edge_deficit REAL, gradient_x REAL, gradient_y REAL,
        gap_share REAL, gaps TEXT NOT NULL,
        lightness REAL, a REAL, b REAL, chroma REAL, hue REAL, dark_green REAL, dark_green_clipped REAL,
        spread REAL,
        corners_from TEXT, frame_confidence REAL, corners_px TEXT,
        px_per_mm REAL, tilt_deg REAL,
        exposure REAL, clipped_pct REAL, dark_pct REAL, glare_pct REAL,
        sharpness REAL, blur_mm REAL, colour_cast REAL, corrected_by TEXT,
        seconds REAL,
        reasons TEXT NOT NULL,
        notes TEXT NOT NULL, coverage_sd REAL, mended INTEGER NOT NULL DEFAULT 0 CHECK (mended IN (0, 1)), inner_long_mm REAL NOT NULL DEFAULT 508.0 CHECK (inner_long_mm > 0), inner_short_mm REAL NOT NULL DEFAULT 254.0 CHECK (inner_short_mm > 0), bed_share REAL, bed_uniformity REAL, corners BLOB, bed_cells BLOB CHECK (length(bed_cells) >= 9),
        UNIQUE (photo, method)
    ) STRICT
    ;
INSERT INTO "score" VALUES(1,1,'plain 1','2026-11-25T15:29:15',1,55.0,50.0,5.0,0.0,X'7C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C15',88.0,80.0,12.0,0.1,3.0,0.5,-0.5,1.5,'[[30.0, 40.0, 5.0, [[25.0, 35.0], [35.0, 45.0]]]]',45.0,-20.0,25.0,32.0,128.7,0.5,0.0,NULL,'station',1.0,'[[10.0, 10.0], [1000.5, 12.0], [1001.0, 500.0], [9.0, 498.0]]',1.95,3.0,52.0,0.1,0.2,0.0,300.0,0.6,NULL,'patch',0.1,'{"cast": "NO_PATCH", "spread": "NO_CANOPY"}','[]',NULL,0,508.0,254.0,NULL,NULL,X'0100000000000000244000000000000024400000000000448F4000000000000028400000000000488F400000000000407F4000000000000022400000000000207F40000000000000F03F000000000000084000000000000000000000000000000000000000000000F87F',NULL);
INSERT INTO "score" VALUES(2,3,'plain 1','2026-11-25T15:29:15',0,55.0,50.0,5.0,0.0,X'7C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C157C15',88.0,80.0,12.0,0.1,3.0,0.5,-0.5,1.5,'[[30.0, 40.0, 5.0, [[25.0, 35.0], [35.0, 45.0]]]]',45.0,-20.0,25.0,32.0,128.7,0.5,0.0,NULL,'frame',0.2,'[[10.0, 10.0], [1000.5, 12.0], [1001.0, 500.0], [9.0, 498.0]]',1.95,3.0,52.0,0.1,0.2,0.0,300.0,0.6,NULL,'patch',0.1,'{"cast": "NO_PATCH", "spread": "NO_CANOPY"}','[]',1.2,0,508.0,254.0,83.5,91.25,X'0101000000000000244000000000000024400000000000448F4000000000000028400000000000488F400000000000407F4000000000000022400000000000207F409A9999999999C93F000000000000084000000000000000000000000000000000000000000000F87F',X'FFFFFFFFFFFFFFFFFFFFFF401F401F401F401F401F401F401F401F401F401F401F401F401F401F401F401F401F401F401F401F401F401F401FA41FA41FA41FA41FA41FA41FA41FA41FA41FA41FA41FA41F0820082008200820082008200820082008200820082008206C206C206C206C206C206C206C206C206C206C206C206C20D020D020D020D020D020D020D020D020D020D020D020D020');
CREATE TABLE seed_lot (
        id INTEGER PRIMARY KEY,
        crop INTEGER NOT NULL REFERENCES crop (id),
        name TEXT NOT NULL,
        received_on TEXT,
        germination_pct REAL CHECK (germination_pct BETWEEN 0 AND 100),
        thousand_seed_g REAL CHECK (thousand_seed_g > 0),
        note TEXT NOT NULL DEFAULT '',
        UNIQUE (crop, name)
    ) STRICT
    ;
INSERT INTO "seed_lot" VALUES(1,1,'L-1',NULL,NULL,NULL,'');
CREATE TABLE setting (name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT;
INSERT INTO "setting" VALUES('today','2026-03-08');
CREATE TABLE suspect (
        id INTEGER PRIMARY KEY,
        score INTEGER NOT NULL REFERENCES score (id),
        x_mm REAL, y_mm REAL, area_cm2 REAL,
        confidence REAL NOT NULL CHECK (confidence BETWEEN 0 AND 1),
        why TEXT NOT NULL,
        outline TEXT NOT NULL,
        said TEXT CHECK (said IN ('mold', 'not mold')),
        said_at TEXT
    , closed_at TEXT, closed_why TEXT NOT NULL DEFAULT '') STRICT
    ;
INSERT INTO "suspect" VALUES(1,1,100.0,50.0,6.0,0.7,'pale web over green','[[90.0, 40.0], [110.0, 40.0], [100.0, 60.0]]','not mold','2026-11-25T15:29:15',NULL,'');
CREATE TABLE tray (
        id INTEGER PRIMARY KEY,
        code TEXT NOT NULL CHECK (code <> ''),
        trial INTEGER REFERENCES trial (id),
        block INTEGER REFERENCES block (id),
        crop INTEGER NOT NULL REFERENCES crop (id),
        medium INTEGER NOT NULL REFERENCES medium (id),
        tray_type INTEGER NOT NULL REFERENCES tray_type (id),
        seed_lot INTEGER REFERENCES seed_lot (id),
        seating TEXT NOT NULL DEFAULT 'in the tray' CHECK (seating IN ('in the tray', 'on an upturned tray')),
        sowing_rate_g REAL CHECK (sowing_rate_g > 0),
        soak_hours REAL CHECK (soak_hours >= 0),
        sown_at TEXT NOT NULL,
        blackout_from TEXT,
        blackout_to TEXT,
        stacked INTEGER CHECK (stacked IN (0, 1)),
        watering TEXT CHECK (watering IN ('top', 'bottom', 'both')),
        feed TEXT,
        heat_mat INTEGER CHECK (heat_mat IN (0, 1)),
        shelf TEXT NOT NULL DEFAULT '',
        position INTEGER NOT NULL,
        light TEXT,
        tag_number INTEGER CHECK (tag_number BETWEEN 10 AND 586),
        done_at TEXT,
        note TEXT NOT NULL DEFAULT ''
    , ended TEXT CHECK (ended IN ('cut', 'thrown away')), ended_why TEXT NOT NULL DEFAULT '') STRICT
    ;
INSERT INTO "tray" VALUES(1,'A1',1,1,1,1,1,1,'in the tray',NULL,NULL,'2026-03-01T09:00:00','2026-03-01T09:00:00',NULL,1,'bottom',NULL,NULL,'A',1,NULL,10,NULL,'',NULL,'');
INSERT INTO "tray" VALUES(2,'A2',1,1,1,1,1,NULL,'in the tray',NULL,NULL,'2026-03-01T09:00:00',NULL,NULL,NULL,NULL,NULL,NULL,'A',2,NULL,11,NULL,'',NULL,'');
INSERT INTO "tray" VALUES(3,'B1',1,1,1,2,1,NULL,'in the tray',NULL,NULL,'2026-03-01T09:00:00',NULL,NULL,NULL,NULL,NULL,NULL,'B',1,NULL,NULL,NULL,'',NULL,'');
CREATE TABLE tray_type (
        id INTEGER PRIMARY KEY,
        name TEXT NOT NULL UNIQUE,
        outer_long_mm REAL NOT NULL CHECK (outer_long_mm > 0),
        outer_short_mm REAL NOT NULL CHECK (outer_short_mm > 0),
        inner_long_mm REAL NOT NULL CHECK (inner_long_mm > 0),
        inner_short_mm REAL NOT NULL CHECK (inner_short_mm > 0),
        rim_height_mm REAL NOT NULL CHECK (rim_height_mm > 0)
    ) STRICT
    ;
INSERT INTO "tray_type" VALUES(1,'10 x 20 inch',545.0,278.0,508.0,254.0,61.0);
CREATE TABLE trial (
        id INTEGER PRIMARY KEY,
        name TEXT NOT NULL UNIQUE,
        question TEXT NOT NULL DEFAULT '',
        trusted INTEGER REFERENCES medium (id),
        margin_points REAL,
        margin_set_at TEXT,
        began_on TEXT,
        note TEXT NOT NULL DEFAULT ''
    ) STRICT
    ;
INSERT INTO "trial" VALUES(1,'t','',NULL,NULL,NULL,NULL,'');
CREATE UNIQUE INDEX "idx__sqlite_migrations_migration_set_name"
    ON "_sqlite_migrations" ("migration_set", "name");
CREATE INDEX tray_growing ON tray (shelf, position) WHERE done_at IS NULL;
CREATE UNIQUE INDEX tray_tag ON tray (tag_number) WHERE done_at IS NULL;
CREATE INDEX tray_by_tag ON tray (tag_number, sown_at);
CREATE INDEX tray_block ON tray (block, crop);
CREATE INDEX photo_of_tray ON photo (tray, taken_at);
CREATE INDEX photo_taken ON photo (taken_at);
CREATE INDEX photo_waiting ON photo (taken_at) WHERE tray IS NULL;
CREATE INDEX suspect_of_score ON suspect (score);
CREATE INDEX suspect_open ON suspect (score) WHERE said IS NULL;
CREATE INDEX correction_of_photo ON correction (photo, kind);
CREATE INDEX reading_of_tray ON reading (tray, kind, taken_at);
CREATE INDEX event_of_tray ON event (tray, at);
CREATE INDEX eye_score_of_tray ON eye_score (tray);
CREATE INDEX old_score_of_score ON old_score (score);
CREATE INDEX bench_test_of_medium ON bench_test (medium, kind);
CREATE INDEX reading_of_shelf ON reading (shelf, kind, taken_at) WHERE tray IS NULL;
CREATE INDEX reading_of_test ON reading (bench_test, kind, taken_at) WHERE bench_test IS NOT NULL;
CREATE UNIQUE INDEX reading_logged ON reading (coalesce(tray, 0), coalesce(shelf, ''), kind, taken_at)
    WHERE log_file IS NOT NULL
    ;
CREATE INDEX reading_logged_at ON reading (taken_at) WHERE log_file IS NOT NULL;
CREATE INDEX look_answer_of_tray ON look_answer (tray, what);
CREATE INDEX look_entry_open ON look_entry (tray, what) WHERE gone_on IS NULL;
CREATE INDEX tray_of_crop ON tray (crop, sown_at);
CREATE INDEX plan_of_trial ON plan (trial, kept_at);
CREATE INDEX draw_of_plan ON draw (plan, drawn_at);
CREATE INDEX eye_score_of_round ON eye_score (round, place);
CREATE INDEX material_factor_by_name ON material_factor (name, medium);
COMMIT;
