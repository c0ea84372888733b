#include <QtTest>

#include "core/wording/caution_words.h"
#include "core/wording/play_words.h"
#include "core/wording/why_words.h"
#include "tests/core/safety/gate_world.h"

#include <set>

using namespace lidlark;
using namespace lidlark::wording;
using catalogue::Tag;
using rotation::WhyCode;

namespace {

QString said(const Sentence &sentence)
{
    return QString::fromStdString(fill(sentence));
}

QString said(const WhyLine &line)
{
    return said(sentenceFor(line));
}

catalogue::Activity doughPlay()
{
    catalogue::Activity activity;
    activity.id = {"dough-play"};
    activity.status = catalogue::Status::Reviewed;
    activity.cautions = {Tag::Dough, Tag::Small};
    activity.skillsMain = {catalogue::Skill::Pin};
    activity.stopWhen = {"A piece goes to the mouth.", "The hand cramps."};
    return activity;
}

/// An offer of @p activity, through the gate like any other. The activity must outlive it.
rotation::Offer offerOf(const catalogue::Activity &activity, std::vector<WhyCode> why)
{
    rotation::OfferFacts facts;
    facts.why = std::move(why);
    facts.goal = "opening his lunch tub";
    facts.coverageSkill = catalogue::Skill::Str;
    return {facts, std::get<safety::Admitted>(GateWorld({}).judge(activity))};
}

/// Its line when nothing stands above it.
WhyLine lineOf(const rotation::Offer &offer)
{
    return whyLines({&offer, 1}).front();
}

} // namespace

/// Guards what stands on an offer and in its caution strip.
class TestOfferWords : public QObject
{
    Q_OBJECT

private slots:
    /// look.md 7: one line of why. Thirty characters is what the width of a card leaves.
    void everyWhyHasItsOwnShortLine()
    {
        const catalogue::Activity activity = doughPlay();
        std::set<QString> seen;
        for (std::size_t i = 0; i < rotation::whyNames.names.size(); ++i) {
            const WhyLine sentence = lineOf(offerOf(activity, {static_cast<WhyCode>(i)}));
            const QString text = said(sentence);
            QVERIFY2(!text.isEmpty() && text.size() <= 30, qPrintable(text));
            QVERIFY2(seen.insert(text).second, qPrintable(text));
        }
    }

    // Source: job.md F8, "every goal-linked offer names the goal in the family's own words".
    void everyOfferForAGoalNamesItAndNoTwoSayTheSame()
    {
        const catalogue::Activity activity = doughPlay();
        const std::vector<rotation::Offer> offers{
            offerOf(activity, {WhyCode::Goal, WhyCode::KnownFriend}),
            offerOf(activity, {WhyCode::Goal, WhyCode::Freshness}),
            offerOf(activity, {WhyCode::Goal})};
        const std::vector<WhyLine> lines = whyLines(offers);
        QCOMPARE(lines.size(), std::size_t{3});
        QCOMPARE(said(lines[0]), QStringLiteral("For opening his lunch tub"));
        QCOMPARE(said(lines[1]), QStringLiteral("Not for a while. For opening his lunch tub"));
        QCOMPARE(said(lines[2]),
                 QStringLiteral("Finger-and-thumb pick-up. For opening his lunch tub"));
    }

    void aReasonGivenAboveIsNotGivenAgain()
    {
        const catalogue::Activity activity = doughPlay();
        const std::vector<rotation::Offer> offers{
            offerOf(activity, {WhyCode::KnownFriend}),
            offerOf(activity, {WhyCode::KnownFriend, WhyCode::Waiting})};
        const std::vector<WhyLine> lines = whyLines(offers);
        QCOMPARE(said(lines[0]), QStringLiteral("Known from before"));
        QCOMPARE(said(lines[1]), QStringLiteral("Has waited its turn"));
    }

    void aNewOneNamesItsCaution()
    {
        catalogue::Activity activity = doughPlay();
        QCOMPARE(said(lineOf(offerOf(activity, {WhyCode::New}))),
                 QStringLiteral("New. Small parts"));
        activity.cautions = {};
        QCOMPARE(said(lineOf(offerOf(activity, {WhyCode::New}))), QStringLiteral("Something new"));
    }

    void doughIsNamedOnlyWhereThereIsDough()
    {
        catalogue::Activity activity = doughPlay();
        QCOMPARE(said(lineOf(offerOf(activity, {WhyCode::UseSoon}))),
                 QStringLiteral("Use the dough soon"));
        activity.cautions = {};
        QVERIFY(
            !said(lineOf(offerOf(activity, {WhyCode::UseSoon}))).contains(QStringLiteral("dough")));
    }

    void anOfferWithoutGoalWordsStillReads()
    {
        const catalogue::Activity activity = doughPlay();
        rotation::Offer offer = offerOf(activity, {WhyCode::Goal});
        QCOMPARE(said(lineOf(offer)), QStringLiteral("For opening his lunch tub"));
        offer.goal.clear();
        QCOMPARE(said(lineOf(offer)), QStringLiteral("For one of your goals"));
    }

    /// look.md 7: "lead sentence says who sits where, then what and when to stop". The strip shows
    /// the first two.
    void theSecondCautionSaysWhenToStop()
    {
        const catalogue::Activity activity = doughPlay();
        const auto sentences = cautionsFor(activity.cautions, activity);
        QCOMPARE(sentences.size(), std::size_t{4});
        QVERIFY(said(sentences[0]).startsWith(QStringLiteral("Small parts")));
        QCOMPARE(said(sentences[1]), QStringLiteral("Stop when a piece goes to the mouth."));
        QVERIFY(said(sentences[2]).startsWith(QStringLiteral("Dough")));
        QCOMPARE(said(sentences[3]), QStringLiteral("Stop when the hand cramps."));
    }

    void withoutTagsTheStopLineComesFirst()
    {
        const auto sentences = cautionsFor({}, doughPlay());
        QCOMPARE(said(sentences.at(0)), QStringLiteral("Stop when a piece goes to the mouth."));
    }

    void noTagIsLeftUnsaid()
    {
        catalogue::Activity activity = doughPlay();
        activity.stopWhen.clear();
        for (std::size_t i = 0; i < catalogue::tagCount; ++i)
            QCOMPARE(cautionsFor({static_cast<Tag>(i)}, activity).size(), std::size_t{1});
    }

    void exceptionsAndPhrasesDiffer()
    {
        std::set<QString> seen;
        for (std::size_t i = 0; i < box::exceptionKindCount; ++i)
            QVERIFY(seen.insert(said(exceptionWord(static_cast<box::ExceptionKind>(i)))).second);
        for (int i = 0; i < 3; ++i)
            QVERIFY(seen.insert(said(phraseWords(static_cast<play::Phrase>(i)))).second);
    }
};

QTEST_APPLESS_MAIN(TestOfferWords)
#include "tst_offer_words.moc"
