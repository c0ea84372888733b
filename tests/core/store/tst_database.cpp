#include <QtTest>

#include <QFile>
#include <QTemporaryDir>

#include <csignal>
#include <sqlite3.h>
#include <sys/resource.h>
#include <unistd.h>

#include "core/store/database.h"
#include "core/store/migrations.h"

using namespace lidlark;
using namespace lidlark::store;

namespace {

QByteArray contents(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

void writeFile(const QString &path, const QByteArray &bytes)
{
    QFile file(path);
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write(bytes);
}

/// Runs SQL with SQLite itself, as another program would.
void runBare(const QString &path, const char *sql)
{
    sqlite3 *handle = nullptr;
    QCOMPARE(sqlite3_open(path.toUtf8().constData(), &handle), SQLITE_OK);
    QCOMPARE(sqlite3_exec(handle, sql, nullptr, nullptr, nullptr), SQLITE_OK);
    sqlite3_close(handle);
}

std::int64_t numberFrom(Database &database, const char *sql)
{
    auto query = database.prepare(sql);
    return query && query->step() ? query->number(0) : -1;
}

} // namespace

/// Guards the store's file: what is opened, what is refused, and that refusing changes nothing.
/// Settings are checked against SQLite's documentation of PRAGMA journal_mode, synchronous
/// (2 = FULL) and foreign_keys.
class TestDatabase : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    QString path(const char *name) const { return m_folder.filePath(QString::fromLatin1(name)); }

private slots:
    void aNewStoreIsDurableAndOurs()
    {
        auto database = Database::open(path("new.lidlark").toStdString());
        QVERIFY(database.ok());
        QCOMPARE(numberFrom(*database, "PRAGMA synchronous"), std::int64_t{2});
        QCOMPARE(numberFrom(*database, "PRAGMA foreign_keys"), std::int64_t{1});
        QCOMPARE(numberFrom(*database, "PRAGMA application_id"), std::int64_t{0x4C49444C});
        QCOMPARE(numberFrom(*database, "PRAGMA user_version"), std::int64_t(migrations().size()));
        auto mode = database->prepare("PRAGMA journal_mode");
        QVERIFY(mode.ok() && mode->step().ok());
        QCOMPARE(mode->text(0), std::string("wal"));
    }

    void everyTableIsStrict()
    {
        auto database = Database::open(":memory:");
        QVERIFY(database.ok());
        QVERIFY(numberFrom(*database, "SELECT count(*) FROM pragma_table_list "
                                      "WHERE schema = 'main' AND type = 'table' "
                                      "AND name NOT LIKE 'sqlite%'") > 10);
        QCOMPARE(numberFrom(*database, "SELECT count(*) FROM pragma_table_list "
                                       "WHERE schema = 'main' AND type = 'table' AND strict = 0 "
                                       "AND name NOT LIKE 'sqlite%'"),
                 std::int64_t{0});
    }

    void aMissingFileIsNotFoundAndNotMade()
    {
        const QString file = path("nowhere.lidlark");
        const auto database = Database::openExisting(file.toStdString());
        QVERIFY(!database.ok());
        QCOMPARE(database.error().code, ErrorCode::NotFound);
        QVERIFY(!QFile::exists(file));
    }

    void whatIsNotADatabaseIsRefusedAndLeftAlone()
    {
        const QString file = path("letter.lidlark");
        writeFile(file, QByteArray("Dear Morven, the box is at school. ").repeated(200));
        const QByteArray before = contents(file);
        const auto database = Database::open(file.toStdString());
        QVERIFY(!database.ok());
        QCOMPARE(database.error().code, ErrorCode::Unreadable);
        QCOMPARE(contents(file), before);
    }

    void anotherProgramsDatabaseIsRefusedAndLeftAlone()
    {
        const QString file = path("recipes.db");
        runBare(file, "CREATE TABLE recipe (name TEXT); INSERT INTO recipe VALUES ('soup')");
        const QByteArray before = contents(file);
        const auto database = Database::open(file.toStdString());
        QVERIFY(!database.ok());
        QCOMPARE(database.error().code, ErrorCode::Unreadable);
        QCOMPARE(contents(file), before);
    }

    void aTornStoreIsRefusedAndLeftAlone()
    {
        const QString file = path("torn.lidlark");
        {
            auto database = Database::open(file.toStdString());
            QVERIFY(database.ok());
        }
        QByteArray bytes = contents(file);
        for (qsizetype i = 30; i < 4000 && i < bytes.size(); ++i)
            bytes[i] = char(0xAA); // the first page beyond the magic words
        writeFile(file, bytes);
        const auto database = Database::open(file.toStdString());
        QVERIFY(!database.ok());
        QCOMPARE(database.error().code, ErrorCode::Unreadable);
        QCOMPARE(contents(file), bytes);
    }

    void aStoreOfALaterLidlarkIsRefusedAndLeftAlone()
    {
        const QString file = path("later.lidlark");
        {
            auto database = Database::open(file.toStdString());
            QVERIFY(database.ok());
        }
        runBare(file, "PRAGMA user_version = 999");
        const QByteArray before = contents(file);
        const auto database = Database::open(file.toStdString());
        QVERIFY(!database.ok());
        QCOMPARE(database.error().code, ErrorCode::NewerSchema);
        QCOMPARE(contents(file), before);
    }

    void aReadOnlyFolderIsSaidSo()
    {
        const QString folder = path("locked");
        QVERIFY(QDir().mkpath(folder));
        QFile::setPermissions(folder, QFile::ReadOwner | QFile::ExeOwner | QFile::ReadOther |
                                          QFile::ExeOther);
        QFile::setPermissions(m_folder.path(), QFile::ReadOwner | QFile::WriteOwner |
                                                   QFile::ExeOwner | QFile::ExeOther);
        const bool root = geteuid() == 0;
        if (root) // root may write anywhere: be nobody for this one question
            QCOMPARE(seteuid(65534), 0);
        const auto database = Database::open((folder + "/a.lidlark").toStdString());
        if (root)
            QCOMPARE(seteuid(0), 0);
        QVERIFY(!database.ok());
        QCOMPARE(database.error().code, ErrorCode::Unwritable);
    }

    void aFolderInPlaceOfAFileIsSaidSo()
    {
        QVERIFY(QDir().mkpath(path("folder.lidlark")));
        const auto database = Database::open(path("folder.lidlark").toStdString());
        QVERIFY(!database.ok());
        QCOMPARE(database.error().code, ErrorCode::Unwritable);
    }

    /// A disk that is full is made with the kernel's own limit on file size (setrlimit(2),
    /// RLIMIT_FSIZE), which makes SQLite's writes fail as on a full disk.
    void aFullDiskLosesNothing()
    {
        const QString file = path("full.lidlark");
        auto database = Database::open(file.toStdString());
        QVERIFY(database.ok());
        QVERIFY(database->run("INSERT INTO local_state VALUES ('kept', 'yes')").ok());
        rlimit before{};
        getrlimit(RLIMIT_FSIZE, &before);
        signal(SIGXFSZ, SIG_IGN);
        rlimit small = before;
        small.rlim_cur = 64UL * 1024;
        setrlimit(RLIMIT_FSIZE, &small);
        Outcome last = Done{};
        {
            auto transaction = Transaction::begin(*database);
            QVERIFY(transaction.ok());
            auto insert = database->prepare("INSERT INTO local_state VALUES (?1, ?2)");
            QVERIFY(insert.ok());
            for (int i = 0; i < 2000 && last; ++i)
                last = insert->bind(1, std::to_string(i)).bind(2, std::string(500, 'x')).run();
            if (last)
                last = transaction->commit();
        }
        setrlimit(RLIMIT_FSIZE, &before);
        QVERIFY(!last.ok());
        QCOMPARE(last.error().code, ErrorCode::Unwritable);
        QCOMPARE(numberFrom(*database, "SELECT count(*) FROM local_state"), std::int64_t{1});
        QCOMPARE(*database->integrity(), std::string("ok"));
    }

    void anUncommittedTransactionLeavesNothing()
    {
        auto database = Database::open(":memory:");
        QVERIFY(database.ok());
        {
            auto transaction = Transaction::begin(*database);
            QVERIFY(transaction.ok());
            QVERIFY(database->run("INSERT INTO local_state VALUES ('a', 'b')").ok());
        }
        QCOMPARE(numberFrom(*database, "SELECT count(*) FROM local_state"), std::int64_t{0});
    }

    void beforeAMigrationACopyIsLaidBeside()
    {
        const QString file = path("old.lidlark");
        {
            auto database = Database::open(file.toStdString());
            QVERIFY(database.ok());
            QVERIFY(database->run("INSERT INTO local_state VALUES ('kept', 'yes')").ok());
        }
        std::vector<Migration> steps(migrations().begin(), migrations().end());
        const int next = int(steps.size()) + 1;
        steps.push_back({next, "next", "CREATE TABLE later (a TEXT) STRICT"});
        {
            auto database = Database::open(file.toStdString(), steps);
            QVERIFY(database.ok());
            QCOMPARE(numberFrom(*database, "PRAGMA user_version"), std::int64_t{next});
            QCOMPARE(numberFrom(*database, "SELECT count(*) FROM local_state"), std::int64_t{1});
        }
        const QString copy = file + QStringLiteral(".before-%1").arg(next);
        auto kept = Database::openExisting(copy.toStdString());
        QVERIFY(kept.ok());
        QCOMPARE(numberFrom(*kept, "SELECT count(*) FROM local_state"), std::int64_t{1});
    }

    void aMigrationThatFailsLeavesTheStoreAsItWas()
    {
        const QString file = path("halfway.lidlark");
        {
            auto database = Database::open(file.toStdString());
            QVERIFY(database.ok());
        }
        std::vector<Migration> steps(migrations().begin(), migrations().end());
        const int next = int(steps.size()) + 1;
        steps.push_back({next, "broken", "CREATE TABLE later (a TEXT) STRICT; SELECT nonsense("});
        QVERIFY(!Database::open(file.toStdString(), steps).ok());
        auto database = Database::openExisting(file.toStdString());
        QVERIFY(database.ok());
        QCOMPARE(numberFrom(*database, "SELECT count(*) FROM sqlite_schema WHERE name = 'later'"),
                 std::int64_t{0});
    }

    void migrationsAreNumberedFromOneWithoutAGap()
    {
        int expected = 0;
        for (const Migration &migration : migrations())
            QCOMPARE(migration.number, ++expected);
        QVERIFY(expected > 0);
    }

    /// Statements are kept when they are done with (idle_statements.h).
    void aStatementComesBackWithoutItsValues()
    {
        auto database = *store::Database::open(":memory:");
        {
            auto first = *database.prepare("SELECT ?1");
            first.bind(1, "words");
            QVERIFY(*first.step());
            QCOMPARE(first.text(0), std::string("words"));
        }
        auto again = *database.prepare("SELECT ?1");
        QVERIFY(*again.step()); // at its start
        QVERIFY(again.isNull(0));
        auto beside = *database.prepare("SELECT ?1");
        beside.bind(1, "others");
        QVERIFY(*beside.step());
        QVERIFY(again.isNull(0));
    }

    /// What was read half way and let go keeps nobody from writing, or from laying out anew.
    void aReadingThatWasLetGoHoldsNothing()
    {
        auto database = *store::Database::open(":memory:");
        QVERIFY(database.run("CREATE TABLE t (n); INSERT INTO t VALUES (1), (2)").ok());
        {
            auto reading = *database.prepare("SELECT n FROM t");
            QVERIFY(*reading.step());
        }
        QVERIFY(database.run("ALTER TABLE t ADD COLUMN m; UPDATE t SET n = n + 1").ok());
        auto again = *database.prepare("SELECT n FROM t");
        QVERIFY(*again.step());
        QCOMPARE(again.number(0), std::int64_t{2});
        QVERIFY(database.run("DROP TABLE IF EXISTS other").ok());
    }
};

QTEST_GUILESS_MAIN(TestDatabase)
#include "tst_database.moc"
