#include <QtTest>

#include "core/journal/fields.h"
#include "core/usecase/check_in.h"
#include "core/usecase/export_record.h"
#include "core/usecase/our_way.h"
#include "core/usecase/own_notes.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/restock.h"
#include "core/usecase/take_back.h"
#include "core/usecase/tend_item.h"

#include "tests/support/phone.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>

using namespace lidlark;
using namespace lidlark::test;
using usecase::OpenTable;

namespace {

std::unique_ptr<Phone> phoneOf(const char *person, store::Role role = store::Role::Parent)
{
    auto morven = therapistWith({"Fin"});
    auto phone = std::make_unique<Phone>(person, role, "h-fin");
    phone->meet(*morven);
    return phone;
}

usecase::OpenRecord recordOf(Phone &phone, const std::string &child = {})
{
    usecase::Workplace workplace = phone.workplace();
    auto record = usecase::openRecord(workplace, child);
    if (!record)
        qFatal("%s", record.error().detail.c_str());
    return *std::move(record);
}

/// What Python's json and csv modules find in the folder, and what they find wrong with it.
struct OutsideReading {
    QJsonObject tables;
    QString wrong;

    [[nodiscard]] QJsonArray rows(const char *table) const
    {
        return tables[QLatin1String(table)].toArray();
    }
    [[nodiscard]] QJsonObject only(const char *table) const
    {
        return rows(table).size() == 1 ? rows(table)[0].toObject() : QJsonObject();
    }
    /// The rows of a table with @p value in @p column.
    [[nodiscard]] QJsonArray where(const char *table, const char *column, const char *value) const
    {
        QJsonArray found;
        const QJsonArray all = rows(table);
        for (const auto &row : all) {
            if (row.toObject()[QLatin1String(column)].toString() == QString::fromUtf8(value))
                found.append(row);
        }
        return found;
    }
};

OutsideReading readBy(const usecase::OpenRecord &record)
{
    const QTemporaryDir folder;
    const QString copy = folder.filePath("copy");
    if (!usecase::writeWholeFolder(copy.toStdString(), usecase::filesOf(record, "Read me.\r\n")))
        qFatal("could not be written");
    QProcess python;
    python.start(
        "python3",
        {QString::fromStdString(sourceDir()) + "/tests/core/usecase/read_export.py", copy});
    python.waitForFinished(60'000);
    const QString wrong = QString::fromUtf8(python.readAllStandardError()).trimmed();
    return {QJsonDocument::fromJson(python.readAllStandardOutput()).object(),
            python.exitCode() == 0 ? wrong : "exit 1: " + wrong};
}

const ActivityId coast{"torn-paper-coast"};

} // namespace

/// Guards the open copy (job.md D6): all that the phone holds is in it, two readers that know no
/// Lidlark open it, and nothing in it is a formula or another family's.
class TestExportRecord : public QObject
{
    Q_OBJECT

private slots:
    void allThatIsHeldIsInIt()
    {
        auto ruth = phoneOf("Ruth");
        usecase::Workplace workplace = ruth->workplace();
        QVERIFY(usecase::keepNote(workplace, "Fin", "Ask about umbrellas").ok());
        QVERIFY(usecase::keepNote(workplace, "Fin", play::NotePhrase::QuieterPlace).ok());
        QVERIFY(usecase::keepOurWay(workplace, "Fin", coast, "On the stairs").ok());
        const usecase::Tending eyes{"Fin", {}, {"eyes"}};
        QVERIFY(usecase::noteGone(workplace, eyes, box::ExceptionKind::Lost, 2).ok());
        QVERIFY(usecase::askFor(workplace, "Fin", {}, {"eyes"}).ok());

        const OutsideReading read = readBy(recordOf(*ruth));
        QCOMPARE(read.wrong, QString());
        QCOMPARE(read.only("boxes")["child"].toString(), "Fin");
        QCOMPARE(read.only("boxes")["handed over"].toString(), "2027-01-04");
        QCOMPARE(read.rows("lid list").size(), 15); // job.md 2.8, the standard box
        const QJsonObject inBox = read.where("in the box", "item", "stick-on eyes")[0].toObject();
        QCOMPARE(inBox["belong here"].toInt(), 6);
        QCOMPARE(inBox["at least"].toInt(), 4);
        QCOMPARE(read.only("not found yet")["pieces"].toInt(), 2);
        QCOMPARE(read.only("went for good")["what became of them"].toString(), "lost");
        QCOMPARE(read.only("asked for")["how far"].toString(), "asked");
        QCOMPARE(read.only("our own ways")["in our words"].toString(), "On the stairs");
        QCOMPARE(read.only("our own ways")["activity"].toString(), "Torn-Paper Coast");
        QCOMPARE(read.rows("own notes").size(), 2);
        QCOMPARE(read.where("own notes", "words", "Ask about umbrellas").size(), 1);
        QCOMPARE(read.where("own notes", "chosen phrase", "quieter place").size(), 1);
        QCOMPARE(read.only("goals")["now"].toInt(), -1);
        QCOMPARE(read.only("goals")["at 2"].toString(), "Opens it and a friend's different tub.");
        QCOMPARE(read.where("people", "name", "Ruth").size(), 1);
        QCOMPARE(read.where("home sheet", "what", "latex must stay away").size(), 1);
    }

    void aPlayAndItsKiteAreInIt()
    {
        auto ruth = phoneOf("Ruth");
        usecase::Workplace workplace = ruth->workplace();
        QVERIFY(usecase::checkIn(workplace, "Fin", checkin::Kite::Whirling, checkin::ShownBy::Child)
                    .ok());
        QVERIFY(usecase::startPlay(workplace, {"Fin", coast, {}, std::nullopt}).ok());
        const OutsideReading read = readBy(recordOf(*ruth));
        QCOMPARE(read.wrong, QString());
        QCOMPARE(read.only("plays")["activity"].toString(), "Torn-Paper Coast");
        QCOMPARE(read.only("plays")["day"].toString(), "2027-01-11");
        QVERIFY(read.only("plays")["ended"].isNull());
        QCOMPARE(read.only("check-ins")["kite"].toString(), "whirling");
        QCOMPARE(read.only("check-ins")["part of day"].toString(), "evening");
    }

    /// A check-in has no time (events.md 4): nowhere in the copy does its event stand between
    /// others that have one.
    void nothingPlacesACheckInInTime()
    {
        auto ruth = phoneOf("Ruth");
        usecase::Workplace workplace = ruth->workplace();
        QVERIFY(usecase::checkIn(workplace, "Fin", checkin::Kite::Clouds, checkin::ShownBy::Child)
                    .ok());
        const OutsideReading read = readBy(recordOf(*ruth));
        QCOMPARE(read.rows("check-ins").size(), 1);
        QVERIFY(!read.only("check-ins").contains("time"));
        QCOMPARE(read.where("noted", "what", "check in").size(), 0);
        QVERIFY(read.rows("noted").size() > 20);
    }

    /// The last day an entry stood in a menu is shown to nobody (events.md 4).
    void whatIsShownToNobodyIsNotInIt()
    {
        auto ruth = phoneOf("Ruth");
        usecase::Workplace workplace = ruth->workplace();
        const auto before = recordOf(*ruth).rows();
        auto recording = store::Recording::begin(ruth->database, ruth->device, ruth->clock);
        QVERIFY(recording
                    ->sayUntimed({journal::LaneKind::Home, "h-fin"}, journal::Kind::Offered,
                                 play::fieldsOfOffered({"c-fin"}, coast))
                    .ok());
        QVERIFY(recording->commit().ok());
        QCOMPARE(recordOf(*ruth).rows(), before);
    }

    void whatWasTakenBackIsMarked()
    {
        auto ruth = phoneOf("Ruth");
        usecase::Workplace workplace = ruth->workplace();
        QVERIFY(usecase::keepOurWay(workplace, "Fin", coast, "On the stairs").ok());
        const auto last = usecase::lastNotedBy(workplace, "Fin", "Ruth");
        QVERIFY(usecase::takeBack(workplace, {"Fin", {}, *last}).ok());
        const OutsideReading read = readBy(recordOf(*ruth));
        QCOMPARE(read.wrong, QString());
        QCOMPARE(read.rows("our own ways").size(), 0);
        const QJsonArray ways = read.where("noted", "what", "our way");
        QCOMPARE(ways.size(), 1);
        QCOMPARE(ways[0].toObject()["taken back"].toString(), "yes");
        QCOMPARE(ways[0].toObject()["words"].toString(),
                 "activity: Torn-Paper Coast; words: On the stairs");
    }

    /// Source: OWASP, "CSV Injection", its own examples among them. The reader refuses every table
    /// with a text that begins a formula; record.json has each as it was typed.
    void nothingIsAFormula()
    {
        auto ruth = phoneOf("Ruth");
        usecase::Workplace workplace = ruth->workplace();
        const QStringList typed{"=1+2\";=1+2",
                                "=1+2'\" ;,=1+2",
                                "+44 20 7946 0000",
                                "-2 and -3",
                                "@SUM(A1:A9)",
                                "=HYPERLINK(\"https://example.org\",\"here\")",
                                "'quoted",
                                "said, \"so\"; and so",
                                QString::fromUtf8("Bl\u00fcten, \u06a9\u06be\u06cc\u0644")};
        for (const QString &words : typed)
            QVERIFY2(usecase::keepNote(workplace, "Fin", words.toStdString()).ok(),
                     qPrintable(words));
        const OutsideReading read = readBy(recordOf(*ruth));
        QCOMPARE(read.wrong, QString());
        for (const QString &words : typed)
            QCOMPARE(read.where("own notes", "words", words.toUtf8()).size(), 1);
    }

    /// The reader does find what it looks for.
    void theReaderRefusesAFormula()
    {
        const QTemporaryDir folder;
        OpenTable table{"notes", "own notes", {"words"}, {}};
        table.add({"=1+2"});
        std::string csv = usecase::csvOf(table);
        csv.erase(csv.find('\''), 1);
        const std::string copy = folder.filePath("copy").toStdString();
        QVERIFY(usecase::writeWholeFolder(
                    copy,
                    std::vector<usecase::NamedFile>{
                        {"record.json", "{\"notes\":{\"own notes\":[{\"words\":\"=1+2\"}]}}"},
                        {"read-me.txt", ""},
                        {"own-notes.csv", csv}})
                    .ok());
        QProcess python;
        python.start("python3",
                     {QString::fromStdString(sourceDir()) + "/tests/core/usecase/read_export.py",
                      QString::fromStdString(copy)});
        python.waitForFinished(60'000);
        QCOMPARE(python.exitCode(), 1);
        QVERIFY(python.readAllStandardError().contains("a formula: =1+2"));
    }

    void aTableIsWrittenByTheRules()
    {
        OpenTable table{"notes", "own notes", {"words", "pieces", "day"}, {}};
        table.add({"a \"b\",\r\nc", -4, *dayFromText("2027-01-11")});
        table.add({"\tx", {}, std::optional<Day>()});
        QCOMPARE(usecase::csvOf(table), std::string("\xEF\xBB\xBF"
                                                    "\"words\",\"pieces\",\"day\"\r\n"
                                                    "\"a \"\"b\"\",\r\nc\",-4,\"2027-01-11\"\r\n"
                                                    "\"'\tx\",,\r\n"));
    }

    /// A therapist hands one family what is held about it, and nothing of another.
    void oneChildsRecordHoldsNothingOfAnothers()
    {
        auto morven = therapistWith({"Fin", "Anya", "Effie"});
        const usecase::OpenRecord all = recordOf(*morven);
        QCOMPARE(all.children, (std::vector<std::string>{"Anya", "Effie", "Fin"}));
        QCOMPARE(readBy(all).wrong, QString());
        const usecase::OpenRecord one = recordOf(*morven, "Anya");
        QCOMPARE(one.children, std::vector<std::string>{"Anya"});
        const OutsideReading read = readBy(one);
        QCOMPARE(read.wrong, QString());
        const QByteArray text = QJsonDocument(read.tables).toJson();
        QVERIFY(text.contains("Anya") && text.contains("Marta"));
        for (const char *other : {"Fin", "Effie", "Ruth", "Kirsty", "Aaron"})
            QVERIFY2(!text.contains(other), other);
    }

    void aNoteIsItsWritersAlone()
    {
        auto ruth = phoneOf("Ruth");
        usecase::Workplace workplace = ruth->workplace();
        QVERIFY(usecase::keepNote(workplace, "Fin", "Ask about umbrellas").ok());
        ruth->device.person = "Gregor";
        const OutsideReading read = readBy(recordOf(*ruth));
        QCOMPARE(read.rows("own notes").size(), 0);
        QVERIFY(!QJsonDocument(read.tables).toJson().contains("umbrellas"));
    }

    void whoMayNotHaveItIsTold()
    {
        auto guest = phoneOf("Grandad", store::Role::Guest);
        usecase::Workplace workplace = guest->workplace();
        QCOMPARE(usecase::openRecord(workplace, {}).error().code, ErrorCode::NotAllowed);
        auto ruth = phoneOf("Ruth");
        usecase::Workplace hers = ruth->workplace();
        QCOMPARE(usecase::openRecord(hers, "Nobody").error().code, ErrorCode::NotFound);
        Phone empty("Ruth", store::Role::Parent, "h-fin");
        usecase::Workplace none = empty.workplace();
        QCOMPARE(usecase::openRecord(none, {}).error().code, ErrorCode::NotFound);
    }

    void bytesThatAreNoTextLoseNothingElse()
    {
        auto ruth = phoneOf("Ruth");
        usecase::OpenRecord record = recordOf(*ruth);
        record.person = "R\xff";
        QCOMPARE(readBy(record).rows("lid list").size(), 15);
    }
};

QTEST_APPLESS_MAIN(TestExportRecord)
#include "tst_export_record.moc"
