#include <QtTest>

#include <QTemporaryDir>

#include "core/store/device_repository.h"
#include "mobile/bridge/print_pages.h"
#include "mobile/prints/pdf_file.h"
#include "mobile/prints/print_job.h"
#include "tests/mobile/prints/printed.h"
#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::mobile;
using namespace lidlark::test;

static void openAssets()
{
    Q_INIT_RESOURCE(lidlark_assets);
    Q_INIT_RESOURCE(lidlark_catalogue);
    Q_INIT_RESOURCE(lidlark_composed);
    Q_INIT_RESOURCE(lidlark_words);
}

/// Guards what is printed (job.md T5, T6, T7, T12, T13, F7, A9, D2, D9).
class TestPrints : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;

private slots:
    void initTestCase() { openAssets(); }
    void draft()
    {
        const QString folder = qEnvironmentVariable("LIDLARK_PRINTS", m_folder.path());
        QDir().mkpath(folder);
        const QString store = m_folder.filePath("morven.lidlark");
        {
            auto database = store::Database::open(store.toStdString());
            const store::Device device{{"d-morven"}, "Morven", store::Role::Therapist, {}};
            (void)store::DeviceRepository(*database).setDevice(device);
            StillClock clock(islandTime(4, 12, 0));
            SeededEntropy entropy("prints");
            usecase::Workplace workplace{*database, realCatalogue(), clock, entropy, device};
            for (const auto &family : usecase::island::families())
                (void)usecase::issueBox(workplace, family);
            (void)usecase::setServiceContact(workplace, "Port Sheal therapy team, 01234 567890");
        }
        Household household({store}, std::make_unique<StillClock>(islandTime(11, 18, 10)), std::make_unique<SeededEntropy>("x"));
        QVERIFY2(household.problem().isEmpty(), qPrintable(household.problem()));
        struct D { const char *child; Print what; Paper paper; QStringList languages; const char *file; };
        const QList<D> all{
            {"Anya", Print::LidList, Paper::A6, {"en", "pl"}, "lid-a6-en-pl"},
            {"Zoya", Print::LidList, Paper::A5, {"ur", "en"}, "lid-a5-ur-en"},
            {"Zoya", Print::LidList, Paper::A6, {"ur"}, "lid-a6-ur"},
            {"Fin", Print::LidList, Paper::A6, {"en"}, "lid-a6-en"},
            {"Fin", Print::LidList, Paper::A4, {"en"}, "lid-a4-en"},
            {"Fin", Print::LidList, Paper::Letter, {"en", "pl"}, "lid-letter"},
            {"Anya", Print::Label, Paper::A4, {"en", "pl"}, "label-a4"},
            {"Fin", Print::Labels, Paper::Letter, {"en"}, "labels-letter"},
            {"Zoya", Print::Label, Paper::A6, {"ur"}, "label-a6-ur"},
            {"Fin", Print::Travel, Paper::A4, {"en"}, "travel-a4"},
            {"Zoya", Print::Travel, Paper::A4, {"ur"}, "travel-a4-ur"},
            {"Anya", Print::Travel, Paper::A5, {"pl"}, "travel-a5-pl"},
            {"Fin", Print::Tally, Paper::A4, {"en"}, "tally-a4"},
            {"Zoya", Print::Tally, Paper::Letter, {"ur"}, "tally-ur"},
            {"Anya", Print::Tally, Paper::A5, {"pl"}, "tally-pl"},
            {"Fin", Print::Summary, Paper::A4, {"en"}, "summary"},
            {"Fin", Print::Summary, Paper::A4, {"ur"}, "summary-ur"},
            {"Fin", Print::Restock, Paper::A4, {"en"}, "restock"},
            {"Fin", Print::KiteCard, Paper::A4, {}, "kite-a4"},
            {"Fin", Print::KiteCard, Paper::A5, {}, "kite-a5"},
        };
        for (const D &d : all) {
            household.setChild(d.child);
            if (d.what == Print::Restock) {
                for (const char *c : {"Fin", "Nuala", "Lewis", "Rory"}) {
                    household.setChild(c);
                    QVERIFY(household.askFor({"dough"}).ok());
                    QVERIFY(household.askFor({"eyes"}).ok());
                }
            }
            auto pages = pagesOf(household, {d.what, d.paper, d.languages, false, 0});
            QVERIFY2(pages.ok(), d.file);
            QVERIFY(savePdf(folder, QString(d.file) + ".pdf", *pages));
        }
    }
};

QTEST_MAIN(TestPrints)
#include "tst_prints.moc"
