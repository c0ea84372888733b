#include <QtTest>

#include "core/journal/event.h"

using namespace lidlark;
using namespace lidlark::journal;

namespace {

Event sample()
{
    return {{LaneKind::Box, "b-fin"},
            {"d-ruth"},
            3,
            {1'799'690'000'000, 2},
            {*dayFrom({2027, 1, 11}), PartOfDay::Evening},
            0,
            "Ruth",
            Kind::Found,
            R"({"count":1,"item":"eyes"})"};
}

} // namespace

/// Guards events.md 2: what an event is, and that nothing in it can change unnoticed.
class TestEvent : public QObject
{
    Q_OBJECT

private slots:
    /// The digest was computed outside the project: CPython 3.11,
    /// hashlib.blake2b(canonical_text.encode(), digest_size=32).hexdigest().
    void identityIsTheBlake2bOfTheCanonicalText()
    {
        const std::string text =
            R"({"author":"Ruth","counter":3,"day":"2027-01-11","device":"d-ruth",)"
            R"("fields":{"count":1,"item":"eyes"},"instant":1799690000000,"kind":"found",)"
            R"("lane":"box:b-fin","logical":2,"offset":0,"part":"evening"})";
        QCOMPARE(QString::fromStdString(canonicalText(sample())), QString::fromStdString(text));
        QCOMPARE(
            QString::fromStdString(identityOf(sample())),
            QStringLiteral("35296a67efdb00ee843affeaa8436386ad763cafebaea76f6a7c29de816439bc"));
    }

    void everyPartOfAnEventChangesItsIdentity_data()
    {
        QTest::addColumn<int>("part");
        for (int i = 0; i < 11; ++i)
            QTest::addRow("part %d", i) << i;
    }

    void everyPartOfAnEventChangesItsIdentity()
    {
        QFETCH(int, part);
        Event event = sample();
        switch (part) {
        case 0:
            event.lane.scope = "b-rory";
            break;
        case 1:
            event.lane.kind = LaneKind::Safety;
            break;
        case 2:
            event.device.value = "d-gran";
            break;
        case 3:
            event.counter = 4;
            break;
        case 4:
            event.instant.ms += 1;
            break;
        case 5:
            event.instant.logical += 1;
            break;
        case 6:
            event.when.day = event.when.day + 1;
            break;
        case 7:
            event.when.part = PartOfDay::Morning;
            break;
        case 8:
            event.offsetMinutes = 60;
            break;
        case 9:
            event.author = "Gran";
            break;
        default:
            event.fields = R"({"count":2,"item":"eyes"})";
            break;
        }
        QVERIFY(identityOf(event) != identityOf(sample()));
    }

    void readingTheCanonicalTextGivesTheEventBack()
    {
        const auto event = eventFromText(canonicalText(sample()));
        QVERIFY(event.ok());
        QVERIFY(*event == sample());
    }

    void whatIsNotAnEventIsRefusedWithTheFieldNamed_data()
    {
        QTest::addColumn<QByteArray>("from");
        QTest::addColumn<QByteArray>("to");
        QTest::addColumn<QByteArray>("field");
        QTest::newRow("no such lane")
            << QByteArray("box:b-fin") << QByteArray("attic:b-fin") << QByteArray("lane");
        QTest::newRow("counter zero")
            << QByteArray("\"counter\":3") << QByteArray("\"counter\":0") << QByteArray("counter");
        QTest::newRow("a day that is not")
            << QByteArray("2027-01-11") << QByteArray("2027-02-30") << QByteArray("day");
        QTest::newRow("unknown kind")
            << QByteArray("\"found\"") << QByteArray("\"drop-table\"") << QByteArray("kind");
        QTest::newRow("offset of a whole day")
            << QByteArray("\"offset\":0") << QByteArray("\"offset\":1440") << QByteArray("offset");
        QTest::newRow("torn") << QByteArray("\"part\":\"evening\"}") << QByteArray("\"part\":\"e")
                              << QByteArray("not JSON");
        QTest::newRow("same values, other spelling")
            << QByteArray("\"counter\":3") << QByteArray("\"counter\": 3")
            << QByteArray("not in canonical form");
    }

    void whatIsNotAnEventIsRefusedWithTheFieldNamed()
    {
        QFETCH(QByteArray, from);
        QFETCH(QByteArray, to);
        QFETCH(QByteArray, field);
        QByteArray text = QByteArray::fromStdString(canonicalText(sample()));
        QVERIFY(text.contains(from));
        text.replace(from, to);
        const auto event = eventFromText(text.toStdString());
        QVERIFY(!event.ok());
        QCOMPARE(QString::fromStdString(event.error().detail),
                 QStringLiteral("event: ") + QString::fromUtf8(field));
    }

    /// JSON sets no limit (RFC 8259, 9: "An implementation may set limits on the maximum depth of
    /// nesting"), and each level takes stack where the text is written again.
    void whatLiesTooDeepIsRefused()
    {
        const auto nested = [](std::size_t depth) {
            Event event = sample();
            event.fields = "{}";
            std::string text = canonicalText(event);
            return text.replace(text.find("{}"), 2,
                                R"({"item":)" + std::string(depth, '[') + std::string(depth, ']') +
                                    "}");
        };
        QVERIFY(eventFromText(nested(30)).ok());
        for (const std::size_t depth : {31, 10'000, 3'900'000}) {
            const auto event = eventFromText(nested(depth));
            QVERIFY(!event.ok());
            QCOMPARE(event.error().detail, std::string("event: too deep"));
        }
        Event words = sample();
        words.fields = "{\"item\":\"\\\"" + std::string(40, '[') + "\\\\\"}";
        QVERIFY(eventFromText(canonicalText(words)).ok());
    }
};

QTEST_APPLESS_MAIN(TestEvent)
#include "tst_event.moc"
