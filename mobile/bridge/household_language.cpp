#include "mobile/bridge/household.h"

#include <QDirIterator>
#include <QFile>
#include <QFileInfo>

#include "core/base/digest.h"
#include "core/catalogue/translation.h"
#include "core/usecase/hand_over.h"
#include "core/usecase/own_catalogue.h"
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

catalogue::Catalogue loaded(const QString &folder)
{
    catalogue::Catalogue made = catalogue::load(filesIn(folder, QStringLiteral("items")),
                                                filesIn(folder, QStringLiteral("activities")));
    warnOf(made.problems());
    return made;
}

catalogue::Catalogue inWords(const catalogue::Catalogue &english, const QString &language,
                             const Household::Places &places)
{
    if (language == QLatin1String(stretchedLanguage))
        return stretched(english);
    catalogue::Catalogue made = catalogue::translate(
        english, filesIn(places.catalogue, QStringLiteral("languages/") + language));
    warnOf(made.untranslated());
    return made;
}

/// The same for the same files alone.
QString markOf(const catalogue::OwnFiles &own)
{
    std::string all;
    const auto add = [&all](const std::string &part) {
        all += std::to_string(part.size()) + ':' + part;
    };
    for (const auto *files : {&own.items, &own.activities}) {
        for (const catalogue::SourceFile &file : *files) {
            add(file.name);
            add(file.text);
        }
        all += '|';
    }
    for (const ItemId &item : own.doubtful)
        add(item.value);
    all += '|';
    for (const ActivityId &activity : own.withdrawn)
        add(activity.value);
    return fromCore(hexOf(blake2b(all)));
}

/// What we have, and the one for looking at screens.
bool isSpoken(const QString &language)
{
    return knownLanguage(language) != nullptr || language == QLatin1String(stretchedLanguage);
}

} // namespace

const catalogue::Catalogue &Household::catalogueIn(const QString &language)
{
    const QString english = knownLanguages().constFirst().code;
    const QString code = language.isEmpty() ? english : language;
    auto plain = m_catalogues.find(code);
    if (plain == m_catalogues.end()) {
        catalogue::Catalogue made =
            code == english ? loaded(m_places.catalogue) : inWords(catalogueIn({}), code, m_places);
        plain = m_catalogues.emplace(code, std::move(made)).first;
    }
    const auto own = m_workplace && !language.isEmpty()
                         ? usecase::ownFilesFor(*m_workplace, toCore(m_child))
                         : Result<catalogue::OwnFiles>(catalogue::OwnFiles());
    if (!own || own->empty()) // unreadable now: what is ours is there
        return plain->second;
    const QString key = code + u'+' + markOf(*own);
    auto known = m_catalogues.find(key);
    if (known == m_catalogues.end()) {
        known = m_catalogues.emplace(key, catalogue::catalogueWith(plain->second, *own)).first;
        warnOf(known->second.problems());
    }
    return known->second;
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
