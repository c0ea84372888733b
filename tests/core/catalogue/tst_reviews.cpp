#include <QTest>

#include "core/wording/review_words.h"
#include "shipped_catalogue.h"

using namespace lidlark;
using namespace lidlark::catalogue;

/// Who has signed an entry: rules of activities.md 1.1 (reviewed_by, reviewed_on, review_due).
class TestReviews : public QObject
{
    Q_OBJECT

private slots:
    void ourFirstEightyAwaitTheirReview();
    void aSignedEntryIsRead();
    void whatDoesNotGoTogether_data();
    void whatDoesNotGoTogether();
    void overdueIsAfterTheDayItIsDue();
    void anotherLanguageNeedsItsOwnSignature();
    void theNoticeSaysHowMany();

private:
    static SourceFile signedAs(const QByteArray &status, const QByteArray &reviews)
    {
        QFile file(shipped::source("assets/catalogue/activities/doorway-poses.yaml"));
        if (!file.open(QIODevice::ReadOnly))
            return {};
        QByteArray text = file.readAll();
        text.replace("status: awaiting-review", "status: " + status + "\n" + reviews);
        return {"activities/doorway-poses.yaml", text.toStdString()};
    }
    static Catalogue loaded(const QByteArray &status, const QByteArray &reviews)
    {
        return load(shipped::filesIn("items"), std::vector{signedAs(status, reviews)});
    }
};

void TestReviews::ourFirstEightyAwaitTheirReview()
{
    const Catalogue catalogue = shipped::catalogue();
    const ReviewCount count =
        countReviews(catalogue.activities(), writtenIn, *dayFrom({2027, 1, 11}));
    QCOMPARE(count, (ReviewCount{80, 0, 0})); // nobody invents a reviewer
}

void TestReviews::aSignedEntryIsRead()
{
    const Catalogue catalogue =
        loaded("reviewed", "reviews: [{language: en, by: occupational-therapist, on: 2027-01-05, "
                           "due: 2028-12-31}]");
    QVERIFY2(catalogue.problems().empty(),
             catalogue.problems().empty() ? "" : catalogue.problems().front().text().c_str());
    const Review &review = catalogue.activities().front().reviews.front();
    QCOMPARE(review.by, ReviewerRole::OccupationalTherapist);
    QCOMPARE(toText(review.due), std::string("2028-12-31"));
}

void TestReviews::whatDoesNotGoTogether_data()
{
    QTest::addColumn<QByteArray>("status");
    QTest::addColumn<QByteArray>("reviews");
    QTest::addColumn<QString>("reason");
    QTest::newRow("reviewed by nobody") << QByteArray("reviewed") << QByteArray() << "needs a line";
    QTest::newRow("a person's name")
        << QByteArray("reviewed")
        << QByteArray("reviews: [{language: en, by: Ruth, on: 2027-01-05, due: 2028-01-05}]")
        << "occupational-therapist";
    QTest::newRow("later than 24 months")
        << QByteArray("reviewed")
        << QByteArray("reviews: [{language: en, by: paediatrician, on: 2027-01-05, due: "
                      "2029-01-05}]")
        << "within 24 months";
    QTest::newRow("due before it was reviewed")
        << QByteArray("reviewed")
        << QByteArray("reviews: [{language: en, by: paediatrician, on: 2027-01-05, due: "
                      "2027-01-05}]")
        << "must be after the review";
    QTest::newRow("no such day")
        << QByteArray("reviewed")
        << QByteArray("reviews: [{language: en, by: paediatrician, on: 2027-02-30, due: "
                      "2028-01-05}]")
        << "must be a day";
    QTest::newRow("signed, but said to wait")
        << QByteArray("awaiting-review")
        << QByteArray("reviews: [{language: en, by: paediatrician, on: 2027-01-05, due: "
                      "2028-01-05}]")
        << "who has reviewed it";
    QTest::newRow("signed twice")
        << QByteArray("reviewed")
        << QByteArray("reviews: [{language: en, by: paediatrician, on: 2027-01-05, due: "
                      "2028-01-05}, {language: en, by: physiotherapist, on: 2027-01-05, due: "
                      "2028-01-05}]")
        << "is listed twice";
}

void TestReviews::whatDoesNotGoTogether()
{
    QFETCH(QByteArray, status);
    QFETCH(QByteArray, reviews);
    QFETCH(QString, reason);
    QString said;
    const Catalogue catalogue = loaded(status, reviews);
    for (const Problem &problem : catalogue.problems())
        said += QString::fromStdString(problem.text()) + "\n";
    QVERIFY2(said.contains(reason), qPrintable(said));
}

void TestReviews::overdueIsAfterTheDayItIsDue()
{
    const Catalogue catalogue =
        loaded("reviewed",
               "reviews: [{language: en, by: physiotherapist, on: 2027-01-05, due: 2027-07-01}]");
    const Activity &activity = catalogue.activities().front();
    QCOMPARE(reviewState(activity, "en", *dayFrom({2027, 7, 1})), ReviewState::Reviewed);
    QCOMPARE(reviewState(activity, "en", *dayFrom({2027, 7, 2})), ReviewState::Overdue);
}

void TestReviews::anotherLanguageNeedsItsOwnSignature()
{
    const Catalogue catalogue =
        loaded("reviewed",
               "reviews: [{language: en, by: physiotherapist, on: 2027-01-05, due: 2027-07-01}]");
    QCOMPARE(reviewState(catalogue.activities().front(), "ur", *dayFrom({2027, 2, 1})),
             ReviewState::Awaiting);
}

void TestReviews::theNoticeSaysHowMany()
{
    const auto said = [](ReviewCount count) { return wording::fill(wording::reviewNotice(count)); };
    QCOMPARE(said({80, 0, 0}), std::string("Written with care, not yet checked by a clinician. "
                                           "Follow your local rules and your therapist."));
    QVERIFY(said({80, 3, 1}).starts_with("A clinician has checked 3 of the 80 activities"));
    QVERIFY(said({80, 80, 2}).empty());
}

QTEST_GUILESS_MAIN(TestReviews)
#include "tst_reviews.moc"
