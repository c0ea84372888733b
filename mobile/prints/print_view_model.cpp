#include "print_view_model.h"

#include "mobile/bridge/known_languages.h"
#include "mobile/bridge/print_pages.h"
#include "mobile/bridge/text.h"
#include "mobile/prints/pdf_file.h"
#include "mobile/prints/prints_view_model.h"

#include <QDir>

namespace lidlark::mobile {

void PrintViewModel::setHousehold(Household *household)
{
    m_household = household;
    m_wish.languages = {household->language()};
    connect(household, &Household::changed, this, &PrintViewModel::make);
    make();
}

QString PrintViewModel::print() const
{
    return fromCore(printNames.of(m_wish.what));
}

void PrintViewModel::setPrint(const QString &name)
{
    m_wish.what = printNames.parse(toCore(name)).value_or(Print::LidList);
    m_papers = papersFor(m_wish.what);
    m_wish.paper = m_papers.constFirst();
    make();
}

void PrintViewModel::make()
{
    if (m_household == nullptr || m_papers.isEmpty() || !m_household->isOpen())
        return;
    auto pages = pagesOf(*m_household, m_wish);
    m_problem = pages ? QString() : m_household->sentenceFor(pages.error());
    m_pages = pages ? *std::move(pages) : PrintPages{};
    if (const auto contact = usecase::serviceContact(m_household->workplace()))
        m_contact = fromCore(*contact);
    emit changed();
}

/// Another page than the one that was kept.
void PrintViewModel::change(const std::function<void()> &what)
{
    what();
    m_said.clear();
    emit saidChanged();
    make();
}

QString PrintViewModel::name() const
{
    return PrintsViewModel::nameOf(m_wish.what);
}

QStringList PrintViewModel::papers() const
{
    QStringList names;
    for (const Paper paper : m_papers)
        names.append(nameOf(paper));
    return names;
}

void PrintViewModel::setPaper(int index)
{
    if (index >= 0 && index < m_papers.size() && m_papers[index] != m_wish.paper)
        change([&] { m_wish.paper = m_papers[index]; });
}

QStringList PrintViewModel::languages() const
{
    QStringList names;
    for (const KnownLanguage &language : knownLanguages())
        names.append(language.ownName);
    return names;
}

QList<bool> PrintViewModel::chosen() const
{
    QList<bool> chosen;
    for (const KnownLanguage &language : knownLanguages())
        chosen.append(m_wish.languages.contains(language.code));
    return chosen;
}

void PrintViewModel::toggleLanguage(int index)
{
    if (index < 0 || index >= knownLanguages().size() || mostLanguages() == 0)
        return;
    const QString code = knownLanguages()[index].code;
    change([&] {
        if (m_wish.languages.contains(code)) {
            if (m_wish.languages.size() > 1)
                m_wish.languages.removeOne(code);
            return;
        }
        if (m_wish.languages.size() == mostLanguages())
            m_wish.languages.removeLast();
        m_wish.languages.append(code);
    });
}

void PrintViewModel::setWeeksOn(int weeks)
{
    if (weeks >= 0 && weeks <= 1 && weeks != m_wish.weeksOn)
        change([&] { m_wish.weeksOn = weeks; });
}

void PrintViewModel::setBuild(const QString &build)
{
    if (build != m_wish.build)
        change([&] { m_wish.build = build; });
}

void PrintViewModel::setByItem(bool byItem)
{
    if (byItem != m_wish.byItem)
        change([&] { m_wish.byItem = byItem; });
}

bool PrintViewModel::mayTellPlays() const
{
    return m_wish.what == Print::Summary && m_household != nullptr && !m_household->therapist() &&
           !m_household->guest();
}

void PrintViewModel::setTellPlays(bool tell)
{
    if (tell != m_wish.tellPlays && mayTellPlays())
        change([&] { m_wish.tellPlays = tell; });
}

QString PrintViewModel::notNowReason() const
{
    if (!mayTellPlays() || yesToShare(*m_household))
        return {};
    return tr("Nobody here has said yes to sharing. That is under Crew, Shared place.");
}

bool PrintViewModel::hasContact() const
{
    return m_wish.what == Print::Label || m_wish.what == Print::Labels;
}

bool PrintViewModel::keepContact(const QString &words)
{
    const Outcome kept = usecase::setServiceContact(m_household->workplace(), toCore(words));
    change([&] { m_contactProblem = kept ? QString() : m_household->sentenceFor(kept.error()); });
    return kept.ok();
}

/// Nobody's name: a file lies about, and is sent on (job.md D9).
QString PrintViewModel::fileName() const
{
    QString file = name();
    if (isOfBuild(m_wish.what))
        file += u' ' + buildFileWords(*m_household, m_wish.build);
    else if (const auto list = lidListPage(*m_household);
             list && !isForTherapist(m_wish.what) && m_wish.what != Print::KiteCard)
        file += QStringLiteral(" %1 R%2").arg(fromCore(list->code)).arg(list->revision);
    return file + QStringLiteral(".pdf");
}

bool PrintViewModel::save()
{
    if (m_pages.empty() || !notNowReason().isEmpty())
        return false;
    const QString folder = documentsOr(m_folder);
    const QString file = fileName();
    const bool written = savePdf(folder, file, m_pages);
    m_said = written ? tr("Saved as \"%1\" in %2.").arg(file, QDir(folder).dirName())
                     : tr("It could not be saved in %1. Is the phone full, or may nothing be "
                          "written there?")
                           .arg(QDir(folder).dirName());
    emit saidChanged();
    return written;
}

} // namespace lidlark::mobile
