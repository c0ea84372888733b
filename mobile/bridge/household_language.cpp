#include "mobile/bridge/household.h"

#include <QDirIterator>
#include <QFile>
#include <QFileInfo>

#include "core/catalogue/translation.h"
#include "core/usecase/hand_over.h"
#include "core/usecase/reading_language.h"
#include "mobile/bridge/known_languages.h"
#include "mobile/bridge/spoken_language.h"
#include "mobile/bridge/stretched.h"
#include "mobile/bridge/text.h"

#include <utility>

namespace lidlark::mobile {

namespace {

std::vector<catalogue::SourceFile> filesIn(const QString &folder, const QString &name)
{
    std::vector<catalogue::SourceFile> files;
    QDirIterator entries(folder + u'/' + name, {QStringLiteral("*.yaml")}, QDir::Files);
    while (entries.hasNext()) {
        QFile file(entries.next());
        catalogue::SourceFile source{toCore(name + u'/' + QFileInfo(file).fileName()), {}};
        if (file.open(QIODevice::ReadOnly))
            source.text = file.readAll().toStdString();
        files.push_back(std::move(source)); // an unreadable file is empty text, and reported
    }
    return files;
}

void warnOf(const std::vector<catalogue::Problem> &problems)
{
    for (const catalogue::Problem &problem : problems)
        qWarning("%s", problem.text().c_str());
}

/// What we have, and the one for looking at screens.
bool isSpoken(const QString &language)
{
    return knownLanguage(language) != nullptr || language == QLatin1String(stretchedLanguage);
}

} // namespace

const catalogue::Catalogue &Household::catalogueIn(const QString &language)
{
    const auto known = m_catalogues.find(language);
    if (known != m_catalogues.end())
        return known->second;
    catalogue::Catalogue made;
    if (language == knownLanguages().constFirst().code) {
        made = catalogue::load(filesIn(m_places.catalogue, QStringLiteral("items")),
                               filesIn(m_places.catalogue, QStringLiteral("activities")));
        warnOf(made.problems());
    } else {
        const catalogue::Catalogue &english = catalogueIn(knownLanguages().constFirst().code);
        made =
            language == QLatin1String(stretchedLanguage)
                ? stretched(english)
                : catalogue::translate(english, filesIn(m_places.catalogue,
                                                        QStringLiteral("languages/") + language));
        warnOf(made.untranslated());
    }
    return m_catalogues.emplace(language, std::move(made)).first->second;
}

QString Household::languageSaid() const
{
    if (isSpoken(m_places.language))
        return m_places.language;
    const auto said = m_workplace ? usecase::readingLanguage(*m_workplace)
                                  : Result<std::optional<std::string>>(std::nullopt);
    return said && *said && knownLanguage(fromCore(**said)) != nullptr ? fromCore(**said)
                                                                       : QString();
}

void Household::speakAsWanted()
{
    const QString said = languageSaid();
    const QString wanted = said.isEmpty() ? systemLanguage() : said;
    if (wanted == m_language)
        return;
    m_language = wanted;
    m_catalogue = &catalogueIn(wanted);
    if (m_workplace)
        m_workplace = std::make_unique<usecase::Workplace>(usecase::Workplace{
            m_workplace->database, *m_catalogue, *m_clock, *m_entropy, m_workplace->device});
    const KnownLanguage *known = knownLanguage(wanted);
    setSpokenLanguage({wanted, known == nullptr || known->reviewed, arabicScript()});
    emit languageChanged();
}

bool Household::arabicScript() const
{
    const KnownLanguage *known = knownLanguage(m_language);
    return known != nullptr && known->arabicScript;
}

void Household::setLanguage(const QString &language)
{
    if (!m_workplace || knownLanguage(language) == nullptr || language == m_language)
        return;
    if (const Outcome kept = usecase::readIn(*m_workplace, toCore(language)); !kept) {
        // It holds until the app is closed all the same.
        qWarning("%s", kept.error().detail.c_str());
        m_places.language = language;
    } else {
        m_places.language.clear();
    }
    speakAsWanted();
}

QStringList Household::writers() const
{
    QStringList writers;
    if (!m_workplace)
        return writers;
    if (const auto known = usecase::writersOf(*m_workplace)) {
        for (const std::string &writer : *known)
            writers.append(fromCore(writer));
    }
    return writers;
}

void Household::setPerson(const QString &person)
{
    if (!m_workplace || person == this->person())
        return;
    const auto device = usecase::handOver(*m_workplace, toCore(person));
    if (!device)
        return;
    m_workplace->device = *device;
    m_places.language.clear();
    speakAsWanted(); // whoever has not said reads the system's language
    emit childrenChanged();
    emit changed();
}

} // namespace lidlark::mobile
