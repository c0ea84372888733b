#include <QtTest>

#include "core/wording/count_words.h"
#include "core/wording/freshness_words.h"
#include "core/wording/moment_words.h"
#include "core/wording/request_words.h"
#include "core/wording/use_words.h"

using namespace lidlark;
using namespace lidlark::wording;

namespace {

constexpr Day monday{20'829}; // 11 January 2027

std::string joined(const std::vector<Sentence> &sentences)
{
    std::string text;
    for (const Sentence &sentence : sentences)
        text += (text.empty() ? "" : " ") + fill(sentence);
    return text;
}

std::string moment(int daysAgo, PartOfDay part)
{
    return fill(momentWords({monday - daysAgo, part}, {monday, PartOfDay::Evening}));
}

std::string difference(int pieces, int low, int high)
{
    const auto words = countDifference({"pegs", pieces, low, high});
    return words ? fill(*words) : std::string();
}

box::PieceFreshness opened(int daysAgo, std::optional<Day> last = std::nullopt)
{
    box::PieceFreshness piece;
    piece.opened = monday - daysAgo;
    piece.lastDay = last;
    return piece;
}

} // namespace

/// Guards what the box says of counts, freshness, requests and use (job.md G4 to G8, T8).
class TestBoxWords : public QObject
{
    Q_OBJECT

private slots:
    void aMomentIsSaidAsPeopleSayIt()
    {
        QCOMPARE(moment(0, PartOfDay::Evening), std::string("this evening"));
        QCOMPARE(moment(0, PartOfDay::Morning), std::string("this morning"));
        QCOMPARE(moment(1, PartOfDay::Afternoon), std::string("yesterday afternoon"));
        QCOMPARE(moment(2, PartOfDay::Evening), std::string("on Saturday evening"));
        QCOMPARE(moment(7, PartOfDay::Evening), std::string("on 4 January"));
        QCOMPARE(fill(onDayWords(monday - 3, monday)), std::string("on Friday"));
        QCOMPARE(fill(onDayWords(monday, monday)), std::string("today"));
        QCOMPARE(fill(untilWords(monday + 5, monday)), std::string("Saturday"));
        QCOMPARE(fill(untilWords(monday + 7, monday)), std::string("18 January"));
    }

    void aPotSaysHowItStands()
    {
        QCOMPARE(joined(pieceWords({}, monday)), std::string("Not opened yet."));
        QCOMPARE(joined(pieceWords(opened(7, monday + 23), monday)),
                 std::string("Opened on 4 January. Good until 3 February."));
        box::PieceFreshness piece = opened(7, monday);
        piece.timesLeftOpen = 2;
        QCOMPARE(joined(pieceWords(piece, monday)),
                 std::string("Opened on 4 January. Left open twice. Today is its last day."));
        QCOMPARE(joined(pieceWords(opened(1, monday + 1), monday)),
                 std::string("Opened yesterday. Use it up by tomorrow."));
        QCOMPARE(joined(pieceWords(opened(7, monday - 1), monday)),
                 std::string("Opened on 4 January. Past its date. Throw it away."));
    }

    /// Caring for Our Children 3.3.0.2 and 3.3.0.3, as quoted in safety.md HY-01: set aside, wash
    /// with soap and water, rinse, sanitise, air dry; what cannot be cleaned is thrown away.
    void whatWasInAMouthIsCleanedOrThrownAway()
    {
        const std::string clean = joined(afterMouthWords(true));
        for (const char *step : {"Set it aside", "soap and water", "rinse", "Disinfect", "dry"})
            QVERIFY2(clean.find(step) != std::string::npos, step);
        QVERIFY(joined(afterMouthWords(false)).find("Throw it away") != std::string::npos);
        box::ItemCare care;
        care.mouthedBy = "Ruth";
        care.mouthedWhen = {monday, PartOfDay::Evening};
        QCOMPARE(fill(mouthedWords(care, {monday, PartOfDay::Evening})),
                 std::string("In a mouth this evening, says Ruth."));
    }

    /// job.md G5: asked, seen, packed, on its way, counted in.
    void aRequestSaysHowFarItHasCome()
    {
        box::Request request;
        request.stepBy = "Ruth";
        request.stepWhen = {monday - 1, PartOfDay::Evening};
        QCOMPARE(fill(requestLine(request, monday)),
                 std::string("Asked for, says Ruth, yesterday."));
        request.step = box::RequestStep::OnItsWay;
        request.stepBy = "Morven";
        request.stepWhen = {monday, PartOfDay::Morning};
        QCOMPARE(fill(requestLine(request, monday)),
                 std::string("On its way, says Morven, today."));
        QCOMPARE(fill(requestSaidBy(request, monday)), std::string("Morven, today"));
    }

    void aCountSaysPlainlyWhatDiffers()
    {
        QCOMPARE(difference(6, 6, 6), std::string());
        QCOMPARE(difference(4, 4, 5), std::string());
        QCOMPARE(difference(5, 6, 6), std::string("Pegs: 5 counted, 6 expected. One is missing."));
        QCOMPARE(difference(4, 6, 6), std::string("Pegs: 4 counted, 6 expected. Two are missing."));
        QCOMPARE(difference(7, 6, 6), std::string("Pegs: 7 counted, 6 expected. One more."));
        QCOMPARE(difference(3, 4, 5),
                 std::string("Pegs: 3 counted, 4 or 5 expected. At least one missing."));
        QCOMPARE(fill(rangeWords(2, 5)), std::string("2 to 5"));
    }

    /// job.md C5: counts spoken; the last one says that all are home, and nothing is praised.
    void aPieceThatComesHomeIsCountedAloud()
    {
        QCOMPARE(fill(homeAloud(1, 6)), std::string("one"));
        QCOMPARE(fill(homeAloud(6, 6)), std::string("six, all home"));
        QCOMPARE(fill(homeAloud(1, 1)), std::string("one"));
        QCOMPARE(fill(homeAloud(0, 6)), std::string("none"));
    }

    void aChartIsReadAloudWeekByWeek()
    {
        const std::vector<WeekPieces> weeks{
            {monday - 21, 0}, {monday - 14, 1}, {monday - 7, 2}, {monday, 0}};
        QCOMPARE(joined(useWords("stick-on eyes", weeks)),
                 std::string("Stick-on eyes: 1 in the week of 28 December. 2 in the week of 4 "
                             "January. None in the other 2 weeks."));
        QCOMPARE(joined(useWords("pegs", std::vector<WeekPieces>{{monday - 7, 0}, {monday, 0}})),
                 std::string("Pegs: none in the last 2 weeks."));
        const auto labels = weekLabels(weeks);
        QCOMPARE(fill(labels[0]), std::string("21 December"));
        QCOMPARE(fill(labels[1]), std::string());
        QCOMPARE(fill(labels[2]), std::string("January"));
        QCOMPARE(fill(labels[3]), std::string("this week"));
    }
};

QTEST_APPLESS_MAIN(TestBoxWords)
#include "tst_box_words.moc"
