#include <QtTest>

#include "core/wording/caution_words.h"
#include "core/wording/day_words.h"
#include "core/wording/error_words.h"
#include "core/wording/play_words.h"
#include "core/wording/reason_words.h"
#include "core/wording/tag_words.h"
#include "core/wording/why_words.h"

#include <set>

using namespace lidlark;
using namespace lidlark::wording;

namespace {

QString said(const Sentence &sentence)
{
    return QString::fromStdString(fill(sentence));
}

/// Words that a screen for families must not use (look.md 8, checkin.md 12, job.md 3).
const QStringList &banned()
{
    static const QStringList words{
        QStringLiteral("!"),         QStringLiteral("please"),   QStringLiteral("great"),
        QStringLiteral("well done"), QStringLiteral("good job"), QStringLiteral("calm down"),
        QStringLiteral("regulate"),  QStringLiteral("naughty"),  QStringLiteral("improve"),
        QStringLiteral("treatment"), QStringLiteral("diagnos"),  QStringLiteral("failed"),
        QStringLiteral("streak"),    QStringLiteral("overdue"),  QStringLiteral("forgot")};
    return words;
}

void checkTone(const QString &text)
{
    QVERIFY2(!text.isEmpty(), "an empty sentence");
    QVERIFY2(!text.contains(u'%'), qPrintable(text));
    for (const QString &word : banned())
        QVERIFY2(!text.contains(word, Qt::CaseInsensitive), qPrintable(text));
}

} // namespace

/// Guards every sentence that core says: there is one for each value, they differ, and they keep
/// the tone of look.md 8.
class TestWording : public QObject
{
    Q_OBJECT

private slots:
    void everyTagHasItsOwnCautionOfAtMostEighteenWords()
    {
        std::set<QString> seen;
        for (std::size_t i = 0; i < catalogue::tagCount; ++i) {
            const auto tag = static_cast<catalogue::Tag>(i);
            const QString text = said({tagCaution(tag), {}});
            QVERIFY(seen.insert(text).second);
            QVERIFY(!tagThing(tag).text().empty());
            QVERIFY(!tagShort(tag).text().empty());
            checkTone(text);
            QVERIFY2(text.split(u' ').size() <= 18, qPrintable(text));
        }
    }

    void everyReasonHasItsOwnSentence()
    {
        const catalogue::Catalogue catalogue;
        std::set<QString> seen;
        for (int code = 0; code <= static_cast<int>(safety::ReasonCode::WaterUnderThree); ++code) {
            safety::Reason reason{static_cast<safety::ReasonCode>(code)};
            reason.tag = catalogue::Tag::Small;
            reason.item = ItemId{"eyes"};
            reason.number = 48;
            reason.name = "Mirren";
            reason.supervision = catalogue::Supervision::Beside;
            const QString text = said(sentenceFor(reason, catalogue));
            checkTone(text);
            QVERIFY2(seen.insert(text).second, qPrintable(text));
        }
    }

    void aReasonReadsWithoutANameToo()
    {
        const catalogue::Catalogue catalogue;
        for (int code = 0; code <= static_cast<int>(safety::ReasonCode::WaterUnderThree); ++code)
            checkTone(said(
                sentenceFor(safety::Reason{static_cast<safety::ReasonCode>(code)}, catalogue)));
    }

    void everyErrorSaysWhatHappenedInOrdinaryWords()
    {
        std::set<QString> seen;
        for (int code = 0; code <= static_cast<int>(ErrorCode::AlreadyAnswered); ++code) {
            const QString text =
                said(sentenceFor(Error{static_cast<ErrorCode>(code), "home.lidlark"}));
            checkTone(text);
            QVERIFY(!text.contains(QStringLiteral("SQL")));
            QVERIFY2(seen.insert(text).second, qPrintable(text));
        }
        QCOMPARE(said(sentenceFor(Error{ErrorCode::ClockUnset, "1970-01-01"})),
                 QStringLiteral("This phone's clock shows 1 January 1970. Set the date, then open "
                                "Lidlark again. Nothing was changed."));
    }

    void everySideConditionAndSupervisionHasWords()
    {
        for (std::size_t i = 0; i < rotation::sideConditionCount; ++i)
            checkTone(said(sentenceFor(static_cast<rotation::SideCondition>(i))));
        for (int i = 0; i < 3; ++i) {
            const auto level = static_cast<catalogue::Supervision>(i);
            QVERIFY(said(supervisionLead(level, "Fin")).contains(QStringLiteral("Fin")));
            checkTone(said(supervisionShort(level)));
        }
    }

    /// checkin.md 3.1: at most eight words to the child, and the same thanks for all.
    void kitesAreOfEqualWeight()
    {
        for (int i = 0; i < 5; ++i) {
            const auto kite = static_cast<checkin::Kite>(i);
            const QString spoken = said(kiteName(kite)) + u' ' + said(kiteNote(kite));
            QVERIFY2(spoken.split(u' ').size() <= 8, qPrintable(spoken));
            checkTone(said(kiteAdvice(kite)));
        }
        QCOMPARE(said(kiteThanks()), QStringLiteral("Thank you for showing me."));
    }

    /// Weekdays from a printed calendar of January 2027 (also: CPython 3.11 calendar module).
    void daysAreNamedAsPeopleNameThem()
    {
        const Day monday = *dayFrom({2027, 1, 11});
        QCOMPARE(said(weekdayWord(monday)), QStringLiteral("Monday"));
        QCOMPARE(said(dayWords(monday, monday)), QStringLiteral("today"));
        QCOMPARE(said(dayWords(monday - 1, monday)), QStringLiteral("yesterday"));
        QCOMPARE(said(dayWords(monday - 2, monday)), QStringLiteral("Saturday"));
        QCOMPARE(said(dayWords(monday - 7, monday)), QStringLiteral("4 January"));
        QCOMPARE(said(weekdayWord(Day{-1})), QStringLiteral("Wednesday"));
    }

    /// Its first letter may be changed where it stands, and nothing else.
    void anArgumentBeginsAsItsPlaceAsksFor()
    {
        const Sentence inside{say("%1 two"), {std::string("one")}};
        QCOMPARE(said({say("%1"), {withCapital(inside)}}), QStringLiteral("One two"));
        QCOMPARE(said({say("%1"), {withSmall(std::string("Tap IT"))}}), QStringLiteral("tap IT"));
        QCOMPARE(said({say("%1 %2 %3"), {inWords(12), inDigits(12), TimeOfDay{65}}}),
                 QStringLiteral("twelve 12 01:05"));
    }

    void placeholdersInArgumentsStayAsTyped()
    {
        QCOMPARE(said({say("%2 and %1"), {std::string("one"), std::string("%1")}}),
                 QStringLiteral("%1 and one"));
        QCOMPARE(said({say("%3 is not given"), {std::string("a")}}),
                 QStringLiteral("%3 is not given"));
        QCOMPARE(QString::fromStdString(numberWord(12)), QStringLiteral("twelve"));
        QCOMPARE(QString::fromStdString(numberWord(13)), QStringLiteral("13"));
    }
};

QTEST_APPLESS_MAIN(TestWording)
#include "tst_wording.moc"
