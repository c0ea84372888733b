#pragma once

#include "core/sync/consent.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/revise_box.h"
#include "core/usecase/say_statement.h"
#include "mobile/bridge/print_pages.h"
#include "mobile/prints/pdf_file.h"
#include "mobile/prints/print_job.h"
#include "tests/mobile/prints/golden_clinic.h"
#include "tests/mobile/prints/printed.h"
#include "tests/support/phone.h"

#include <QTemporaryDir>

#include <memory>

/// Outside any namespace: Qt declares what it calls where it is called.
inline void openPrintAssets()
{
    Q_INIT_RESOURCE(lidlark_assets);
    Q_INIT_RESOURCE(lidlark_catalogue);
    Q_INIT_RESOURCE(lidlark_composed);
    Q_INIT_RESOURCE(lidlark_words);
}

namespace lidlark::test {

/// The therapist's phone of the island, with every box, and somewhere to print to.
class PrintRoom
{
public:
    static constexpr auto contact = "Hallasay team, 01234 567890";

    /// Where the files stay, for eyes.
    [[nodiscard]] QString papers() const
    {
        return qEnvironmentVariable("LIDLARK_PRINTS", m_folder.filePath(QStringLiteral("papers")));
    }
    [[nodiscard]] std::unique_ptr<mobile::Household> phone(const char *store) const
    {
        return std::make_unique<mobile::Household>(
            mobile::Household::Places{m_folder.filePath(store)},
            std::make_unique<StillClock>(islandTime(11, 18, 10)),
            std::make_unique<SeededEntropy>("prints"));
    }
    void writeMorven() const
    {
        auto database =
            store::Database::open(m_folder.filePath(QStringLiteral("morven")).toStdString());
        const store::Device device{{"d-morven"}, "Morven", store::Role::Therapist, {}};
        (void)store::DeviceRepository(*database).setDevice(device);
        StillClock clock(islandTime(4, 12, 0));
        SeededEntropy entropy("morven");
        usecase::Workplace morven{*database, realCatalogue(), clock, entropy, device};
        for (const usecase::island::Family &family : usecase::island::families())
            (void)usecase::issueBox(morven, family);
        (void)usecase::setServiceContact(morven, contact);
        (void)usecase::sayStatement(morven, {"h-anya"}, {"p-bartek", "latex", "yes"});
        auto packed = familyOf("Mairead").packed; // job.md scenario 7
        packed.erase({"bands"});
        packed.erase({"balloon"});
        packed[{"loops"}] = 6;
        clock.moveTo(islandTime(11, 10, 0));
        (void)usecase::reviseBox(morven, "Mairead", {}, packed);
        (void)GoldenClinic(morven).keep();
    }
    /// Ruth has played; @p yes: and said yes to sharing.
    void writeRuth(const char *store, bool yes) const
    {
        auto morven = therapistWith({"Fin"});
        auto database = store::Database::open(m_folder.filePath(store).toStdString());
        const store::Device device{{"d-ruth"}, "Ruth", store::Role::Parent, {"h-fin"}};
        (void)store::DeviceRepository(*database).setDevice(device);
        StillClock clock(islandTime(10, 18, 0));
        SeededEntropy entropy("ruth");
        usecase::Workplace ruth{*database, realCatalogue(), clock, entropy, device};
        (void)usecase::takeEventsFrom(morven->database, ruth, [](const auto &) { return true; });
        const auto play = usecase::startPlay(ruth, {"Fin", {"slow-oars"}, {}, std::nullopt});
        (void)usecase::noticePhrase(ruth, *play, play::Phrase::AskedAgain);
        if (yes)
            (void)sync::consentToSharing(*database, {"Ruth", usecase::island::dayOne(), 1});
    }

    [[nodiscard]] Printed printed(mobile::Household &household, const char *child,
                                  const mobile::PrintWish &wish, const QString &file) const
    {
        household.setChild(QString::fromLatin1(child));
        const auto pages = mobile::pagesOf(household, wish);
        if (!pages || !mobile::savePdf(papers(), file, *pages))
            qFatal("%s: not printed", qPrintable(file));
        return Printed(QDir(papers()).filePath(file));
    }
    [[nodiscard]] Printed printed(const char *child, const mobile::PrintWish &wish,
                                  const char *file) const
    {
        return printed(*m_morven, child, wish, QString::fromLatin1(file));
    }

    /// Called once, before anything is printed.
    void open()
    {
        openPrintAssets();
        writeMorven();
        m_morven = phone("morven");
        for (const char *child : {"Fin", "Nuala", "Lewis"}) {
            m_morven->setChild(QString::fromLatin1(child));
            (void)m_morven->askFor({"dough"});
        }
    }
    [[nodiscard]] mobile::Household &morven() const { return *m_morven; }

private:
    QTemporaryDir m_folder;
    std::unique_ptr<mobile::Household> m_morven;
};

/// Joined signs as single letters (Unicode NFKC), one kind of space, and one of Arabic digits: a
/// face may have one sign for two code points.
inline QString plain(QString text)
{
    text = text.normalized(QString::NormalizationForm_KC);
    QString kept;
    for (const QChar letter : text) {
        const bool arabicDigit = letter >= QChar(0x660) && letter <= QChar(0x669);
        const bool direction = letter.category() == QChar::Other_Format;
        if (!direction)
            kept.append(arabicDigit ? QChar(letter.unicode() + 0x90) : letter);
    }
    return kept.simplified();
}

} // namespace lidlark::test
