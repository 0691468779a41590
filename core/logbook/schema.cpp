// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/schema.h"

#include <algorithm>
#include <map>

#include "core/logbook/logbook.h"

namespace taut::logbook {

namespace {

/// Times are kept as milliseconds and shown to readers from outside as RFC 3339 in UTC.
std::string utc(const std::string& column)
{
    return "strftime('%Y-%m-%dT%H:%M:%S', " + column + " / 1000, 'unixepoch') || printf('.%03dZ', " + column +
           " % 1000)";
}

/// Rows that are never changed and never removed. INSERT OR REPLACE walks past a delete guard unless recursive_triggers
/// is on, so the insert guard refuses what would replace, whatever the connection was set to.
std::string sealTables()
{
    return R"(
CREATE TABLE seal_rows (
    seq INTEGER PRIMARY KEY,
    kind TEXT NOT NULL,
    id TEXT NOT NULL,
    subject TEXT NOT NULL,
    sealed_at INTEGER NOT NULL,
    person TEXT NOT NULL,
    document BLOB NOT NULL,
    previous_link BLOB NOT NULL CHECK (length(previous_link) = 32),
    link BLOB NOT NULL UNIQUE CHECK (length(link) = 32)
) STRICT;
CREATE INDEX seal_rows_by_subject ON seal_rows (subject, seq) WHERE subject <> '';
CREATE TRIGGER seal_rows_append BEFORE INSERT ON seal_rows BEGIN
    SELECT RAISE(ABORT, 'a seal is only ever appended after the last one')
        WHERE NEW.seq <> (SELECT coalesce(max(seq), 0) + 1 FROM seal_rows)
        OR NEW.previous_link <> coalesce((SELECT link FROM seal_rows ORDER BY seq DESC LIMIT 1), zeroblob(32))
        OR EXISTS (SELECT 1 FROM seal_rows WHERE link = NEW.link);
END;
CREATE TRIGGER seal_rows_no_update BEFORE UPDATE ON seal_rows BEGIN
    SELECT RAISE(ABORT, 'a seal is never changed');
END;
CREATE TRIGGER seal_rows_no_delete BEFORE DELETE ON seal_rows BEGIN
    SELECT RAISE(ABORT, 'a seal is never removed');
END;
CREATE TABLE signature_rows (
    seq INTEGER NOT NULL REFERENCES seal_rows (seq),
    person TEXT NOT NULL,
    key BLOB NOT NULL CHECK (length(key) = 32),
    meaning TEXT NOT NULL,
    signed_at INTEGER NOT NULL,
    signature BLOB NOT NULL CHECK (length(signature) = 64),
    PRIMARY KEY (seq, person, meaning)
) STRICT;
CREATE TRIGGER signature_rows_append BEFORE INSERT ON signature_rows BEGIN
    SELECT RAISE(ABORT, 'a signature is never replaced') WHERE EXISTS (SELECT 1 FROM signature_rows
        WHERE seq = NEW.seq AND person = NEW.person AND meaning = NEW.meaning);
END;
CREATE TRIGGER signature_rows_no_update BEFORE UPDATE ON signature_rows BEGIN
    SELECT RAISE(ABORT, 'a signature is never changed');
END;
CREATE TRIGGER signature_rows_no_delete BEFORE DELETE ON signature_rows BEGIN
    SELECT RAISE(ABORT, 'a signature is never removed');
END;
)";
}

/// Answers of the documents to questions that are asked often.
std::string indexTables()
{
    return R"(
CREATE TABLE person_rows (
    person TEXT PRIMARY KEY,
    seq INTEGER NOT NULL REFERENCES seal_rows (seq),
    name TEXT NOT NULL,
    role TEXT NOT NULL,
    active INTEGER NOT NULL,
    key BLOB CHECK (key IS NULL OR length(key) = 32)
) STRICT;
CREATE TABLE definition_rows (
    what TEXT NOT NULL,
    id TEXT NOT NULL,
    edition INTEGER NOT NULL,
    sha256 TEXT NOT NULL,
    text TEXT NOT NULL,
    seq INTEGER NOT NULL REFERENCES seal_rows (seq),
    PRIMARY KEY (what, id, edition),
    UNIQUE (what, id, sha256)
) STRICT;
CREATE TABLE withdrawal_rows (
    press TEXT PRIMARY KEY,
    seq INTEGER NOT NULL REFERENCES seal_rows (seq),
    reason TEXT NOT NULL,
    person TEXT NOT NULL,
    name TEXT NOT NULL,
    at INTEGER NOT NULL
) STRICT;
CREATE TABLE run_rows (
    number INTEGER PRIMARY KEY,
    run_id TEXT NOT NULL UNIQUE,
    seq INTEGER UNIQUE REFERENCES seal_rows (seq),
    press TEXT NOT NULL,
    day TEXT NOT NULL,
    job TEXT NOT NULL,
    substrate TEXT NOT NULL,
    roll TEXT NOT NULL,
    operator TEXT NOT NULL,
    operator_name TEXT NOT NULL,
    begun INTEGER NOT NULL,
    ended INTEGER NOT NULL,
    state TEXT NOT NULL,
    verdict TEXT NOT NULL,
    present TEXT NOT NULL,
    reviewed_by TEXT NOT NULL,
    deviations INTEGER NOT NULL
) STRICT;
CREATE INDEX run_rows_by_press ON run_rows (press, seq);
CREATE INDEX run_rows_by_job ON run_rows (job, seq);
CREATE INDEX run_rows_by_day ON run_rows (press, day);
CREATE INDEX run_rows_by_present ON run_rows (present, seq);
CREATE TABLE reading_rows (
    seq INTEGER NOT NULL REFERENCES seal_rows (seq),
    step TEXT NOT NULL,
    press TEXT NOT NULL,
    target TEXT NOT NULL,
    si_value REAL NOT NULL,
    unit TEXT NOT NULL,
    low REAL,
    high REAL,
    uncertainty REAL,
    verdict TEXT NOT NULL,
    entered_text TEXT NOT NULL,
    at INTEGER NOT NULL,
    person TEXT NOT NULL,
    PRIMARY KEY (seq, step)
) STRICT, WITHOUT ROWID;
CREATE INDEX reading_rows_by_series ON reading_rows (target, press, seq, step);
)";
}

std::string workTables()
{
    return R"(
CREATE TABLE open_events (
    run_id TEXT NOT NULL REFERENCES run_rows (run_id),
    n INTEGER NOT NULL,
    event TEXT NOT NULL,
    PRIMARY KEY (run_id, n)
) STRICT;
CREATE TRIGGER open_events_append BEFORE INSERT ON open_events BEGIN
    SELECT RAISE(ABORT, 'an event is only ever appended after the last one of its run')
        WHERE NEW.n <> (SELECT coalesce(max(n), 0) + 1 FROM open_events WHERE run_id = NEW.run_id)
        OR EXISTS (SELECT 1 FROM run_rows WHERE run_id = NEW.run_id AND seq IS NOT NULL);
END;
CREATE TRIGGER open_events_no_update BEFORE UPDATE ON open_events BEGIN
    SELECT RAISE(ABORT, 'an event is never changed');
END;
CREATE TRIGGER open_events_until_sealed BEFORE DELETE ON open_events
WHEN NOT EXISTS (SELECT 1 FROM run_rows WHERE run_id = OLD.run_id AND seq IS NOT NULL) BEGIN
    SELECT RAISE(ABORT, 'events are kept until their run is sealed');
END;
CREATE TABLE secret_rows (
    person TEXT PRIMARY KEY REFERENCES person_rows (person),
    pin TEXT NOT NULL,
    under_passphrase TEXT NOT NULL,
    under_badge TEXT NOT NULL,
    first_use TEXT NOT NULL,
    failures INTEGER NOT NULL,
    wait_until INTEGER NOT NULL
) STRICT;
CREATE TABLE file_facts (
    name TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT;
)";
}

/// Since layout 6.
std::string attachmentTables()
{
    return R"(
CREATE TABLE attachment_rows (
    sha256 TEXT PRIMARY KEY CHECK (length(sha256) = 64),
    content BLOB NOT NULL
) STRICT;
CREATE TRIGGER attachment_rows_append BEFORE INSERT ON attachment_rows BEGIN
    SELECT RAISE(ABORT, 'what was attached is never replaced')
        WHERE EXISTS (SELECT 1 FROM attachment_rows WHERE sha256 = NEW.sha256);
END;
CREATE TRIGGER attachment_rows_no_update BEFORE UPDATE ON attachment_rows BEGIN
    SELECT RAISE(ABORT, 'what was attached is never changed');
END;
CREATE TRIGGER attachment_rows_no_delete BEFORE DELETE ON attachment_rows BEGIN
    SELECT RAISE(ABORT, 'what was attached is never removed');
END;
CREATE VIEW attachments AS SELECT sha256, length(content) AS size, content FROM attachment_rows;
)";
}

/// Since layout 7: what is asked of the courses of runs, and every list by an index of its own. An index of runs holds
/// what else a list may be narrowed by, so that whatever does not fit is passed over without its row being read.
std::string courseTables()
{
    return R"(
ALTER TABLE run_rows ADD COLUMN kind TEXT NOT NULL DEFAULT '';
ALTER TABLE run_rows ADD COLUMN press_edition INTEGER NOT NULL DEFAULT 0;
ALTER TABLE run_rows ADD COLUMN press_sha TEXT NOT NULL DEFAULT '';
ALTER TABLE run_rows ADD COLUMN title TEXT NOT NULL DEFAULT '';
ALTER TABLE run_rows ADD COLUMN customer TEXT NOT NULL DEFAULT '';
ALTER TABLE run_rows ADD COLUMN outside INTEGER NOT NULL DEFAULT 0;
ALTER TABLE run_rows ADD COLUMN incidents INTEGER NOT NULL DEFAULT 0;
ALTER TABLE run_rows ADD COLUMN hour INTEGER NOT NULL DEFAULT 0;
ALTER TABLE run_rows ADD COLUMN waste_m REAL;
ALTER TABLE reading_rows ADD COLUMN aimed REAL;
ALTER TABLE reading_rows ADD COLUMN first_verdict TEXT NOT NULL DEFAULT '';
DROP INDEX run_rows_by_press;
DROP INDEX run_rows_by_job;
CREATE INDEX run_rows_by_press ON run_rows
    (press, seq, present, state, deviations, begun, incidents, job, substrate, operator);
CREATE INDEX run_rows_by_job ON run_rows
    (job, seq, present, state, deviations, begun, incidents, press, substrate, operator);
CREATE INDEX run_rows_by_substrate ON run_rows
    (substrate, seq, present, state, deviations, begun, incidents, press, job, operator);
CREATE INDEX run_rows_by_person ON run_rows
    (operator, seq, present, state, deviations, begun, press, job, substrate);
CREATE INDEX run_rows_by_state ON run_rows (state, seq, present, deviations, begun);
CREATE INDEX run_rows_by_incidents ON run_rows (seq, incidents, present, begun) WHERE incidents > 0;
CREATE INDEX run_rows_by_deviations ON run_rows (seq, deviations, present, state, begun) WHERE deviations > 0;
CREATE INDEX run_rows_by_wanting ON run_rows (seq, present, state, begun) WHERE present IN ('sealed', 'corrected');
CREATE INDEX run_rows_by_open ON run_rows (number) WHERE seq IS NULL;
CREATE INDEX reading_rows_by_target ON reading_rows (target, seq, step);
CREATE TABLE series_rows (
    press TEXT NOT NULL,
    target TEXT NOT NULL,
    unit TEXT NOT NULL,
    readings INTEGER NOT NULL,
    PRIMARY KEY (press, target)
) STRICT, WITHOUT ROWID;
CREATE TABLE day_rows (
    day INTEGER PRIMARY KEY,
    first INTEGER NOT NULL,
    last INTEGER NOT NULL
) STRICT;
CREATE TABLE stage_rows (
    seq INTEGER NOT NULL REFERENCES seal_rows (seq),
    place INTEGER NOT NULL,
    stage TEXT NOT NULL,
    worked INTEGER NOT NULL,
    watched INTEGER NOT NULL,
    away INTEGER NOT NULL,
    external INTEGER NOT NULL,
    PRIMARY KEY (seq, place)
) STRICT, WITHOUT ROWID;
CREATE TABLE incident_rows (
    seq INTEGER NOT NULL REFERENCES seal_rows (seq),
    n INTEGER NOT NULL,
    what TEXT NOT NULL,
    step TEXT NOT NULL,
    target TEXT NOT NULL,
    detail TEXT NOT NULL,
    at INTEGER NOT NULL,
    PRIMARY KEY (seq, n, what)
) STRICT, WITHOUT ROWID;
CREATE TABLE word_rows (
    row INTEGER PRIMARY KEY,
    run TEXT NOT NULL,
    job TEXT NOT NULL,
    title TEXT NOT NULL,
    customer TEXT NOT NULL,
    substrate TEXT NOT NULL,
    rolls TEXT NOT NULL,
    operator TEXT NOT NULL,
    remarks TEXT NOT NULL
) STRICT;
CREATE VIRTUAL TABLE word_search USING fts5(run, job, title, customer, substrate, rolls, operator, remarks,
    content='word_rows', content_rowid='row', columnsize=0, prefix='1 2 3 4 5 6',
    tokenize='unicode61 remove_diacritics 2');
CREATE VIEW stage_times AS SELECT s.seq AS seq, r.run_id AS run_id, s.place AS place, s.stage AS stage,
    s.worked AS worked_ms, s.watched AS watched_ms, s.away AS away_ms, s.external AS external_ms
    FROM stage_rows AS s JOIN run_rows AS r ON r.seq = s.seq;
)"
           "CREATE VIEW incidents AS SELECT i.seq AS seq, r.run_id AS run_id, i.n AS n, i.what AS what, i.step AS "
           "step, "
           "i.target AS target, i.detail AS detail, " +
           utc("i.at") + " AS at FROM incident_rows AS i JOIN run_rows AS r ON r.seq = i.seq;\n";
}

std::string views()
{
    return "CREATE VIEW seals AS SELECT seq, kind, id, subject, " + utc("sealed_at") +
           " AS sealed_at, person, document, lower(hex(previous_link)) AS previous_link, lower(hex(link)) AS link "
           "FROM seal_rows;\n"
           "CREATE VIEW signatures AS SELECT seq, person, lower(hex(key)) AS key, meaning, " +
           utc("signed_at") +
           " AS signed_at, lower(hex(signature)) AS signature FROM signature_rows;\n"
           "CREATE VIEW sealed_runs AS SELECT r.seq AS seq, r.run_id AS run_id, s.sealed_at AS sealed_at, r.press AS "
           "press, r.job AS job, r.substrate AS substrate, r.roll AS roll, r.operator_name AS operator, r.state AS "
           "state, r.verdict AS verdict, r.present AS present, s.document AS document, s.previous_link AS "
           "previous_link, s.link AS link FROM run_rows AS r JOIN seals AS s ON s.seq = r.seq;\n"
           "CREATE VIEW readings AS SELECT m.seq AS seq, r.run_id AS run_id, m.step AS step, m.target AS target, "
           "m.si_value AS si_value, m.unit AS unit, m.low AS low, m.high AS high, m.uncertainty AS uncertainty, "
           "m.verdict AS verdict, m.entered_text AS entered_text, " +
           utc("m.at") +
           " AS at, m.person AS person FROM reading_rows AS m JOIN run_rows AS r ON r.seq = m.seq;\n"
           "CREATE VIEW definitions AS SELECT seq, what, id, edition, sha256, text FROM definition_rows;\n";
}

/// The first layout that was given away, and what each later one added.
std::string schemaOf(int layout)
{
    std::string sql = sealTables() + indexTables() + workTables() + views();
    for (int one = kOldestSchema + 1; one <= layout; ++one) sql += stepTo(one);
    return sql;
}

using Layout = std::map<std::string, std::string>;

Layout layoutOf(SQLite::Database& db)
{
    Layout layout;
    // What lies behind the search the engine lays out, each version as it does; that it is there counts.
    SQLite::Statement query(db, "SELECT type || ' ' || name, CASE WHEN type = 'table' AND name GLOB 'word_search_*' "
                                "THEN '' ELSE sql END FROM sqlite_schema WHERE sql IS NOT NULL");
    while (query.executeStep()) layout[query.getColumn(0).getString()] = query.getColumn(1).getString();
    return layout;
}

/// What a logbook of this layout consists of.
const Layout& layoutFrom(int layout)
{
    static const std::map<int, Layout> kAll = [] {
        std::map<int, Layout> all;
        for (int one = kOldestSchema; one <= kSchema; ++one) {
            SQLite::Database db(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_MEMORY);
            db.exec(schemaOf(one));
            all[one] = layoutOf(db);
        }
        return all;
    }();
    return kAll.at(std::clamp(layout, kOldestSchema, kSchema));
}

}  // namespace

const std::string& schemaSql()
{
    static const std::string kSql = schemaOf(kSchema);
    return kSql;
}

std::string stepTo(int layout)
{
    // What the layout has that the one before it has not; what was there before stays as it is.
    if (layout == 6) return attachmentTables();
    return layout == 7 ? courseTables() : std::string();
}

std::vector<std::string> layoutDifferences(SQLite::Database& db)
{
    const Layout& own = layoutFrom(static_cast<int>(numberOf(db, "PRAGMA user_version")));
    const Layout found = layoutOf(db);
    std::vector<std::string> names;
    for (const auto& [name, sql] : own) {
        const auto it = found.find(name);
        if (it == found.end() || it->second != sql) names.push_back(name);
    }
    for (const auto& [name, sql] : found)
        if (!own.contains(name)) names.push_back(name);
    return names;
}

}  // namespace taut::logbook
