#include <QTest>

#include "core/measure/film.h"

using namespace lidlark::measure;

/// Bags and sheets of plastic. Source of the limits: EN 71-1 and ASTM F963 film clauses as read in
/// trade summaries (safety.md PB-01): 0.038 mm, an opening of 380 mm round, a sheet of 100 x 100
/// mm, holes over 1 %.
class TestFilm : public QObject
{
    Q_OBJECT

private slots:
    void onlyWhatCoversAFaceIsJudged()
    {
        QVERIFY(!coversAFace({.openingPerimeterMm = 380}));
        QVERIFY(coversAFace({.openingPerimeterMm = 381}));
        QVERIFY(!coversAFace({.longMm = 400, .shortMm = 100}));
        QVERIFY(coversAFace({.longMm = 101, .shortMm = 101}));
        QVERIFY(coversAFace({.longMm = 101, .shortMm = 400}));
    }

    void thinFilmSmothers()
    {
        Film bag{.meanThicknessMm = 0.038, .openingPerimeterMm = 500};
        QVERIFY(!maySmother(bag));
        bag.meanThicknessMm = 0.037;
        QVERIFY(maySmother(bag));
        bag.holesPercent = 1;
        QVERIFY(!maySmother(bag));
        bag.holesPercent = 0.9;
        QVERIFY(maySmother(bag));
        bag.openingPerimeterMm = 300;
        QVERIFY(!maySmother(bag));
    }

    void aDrawstringIsNeverRight()
    {
        QVERIFY(maySmother({.meanThicknessMm = 1, .openingPerimeterMm = 100, .drawstring = true}));
    }
};

QTEST_APPLESS_MAIN(TestFilm)
#include "tst_film.moc"
