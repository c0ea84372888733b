#include "mobile/bridge/handed_file.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>

#include "core/base/whole_file.h"
#include "core/sync/bundle_of_crew.h"
#include "core/sync/bundle_storage.h"
#include "core/sync/sync_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

Result<Done> writeBundle(CrewDesk &desk, const Whose &whose, const std::string &file)
{
    const auto box = desk.crewOf(whose);
    auto post = desk.post();
    if (!box || !post)
        return box ? post.error() : box.error();
    const auto bundle = sync::bundleOfCrew(*post, *box);
    if (!bundle)
        return bundle.error();
    const auto bytes = sync::bundleOf(*bundle);
    if (!bytes || writeWholeFile(file, *bytes))
        return Error{ErrorCode::Unwritable, file};
    return Done{};
}

Result<ShareReport> takeBundle(CrewDesk &desk, const Whose &whose, const QString &name)
{
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly))
        return ShareReport{sync::noFileSentence(), {}, 0};
    // One byte more than the largest, so that a larger one is known as such.
    const QByteArray bytes = file.read(static_cast<qint64>(sync::largestBundle) + 1);
    auto bundle = sync::bundleFrom({bytes.constData(), static_cast<std::size_t>(bytes.size())});
    if (const auto *fault = std::get_if<sync::BundleFault>(&bundle))
        return ShareReport{sync::sentenceFor(*fault), {}, 0};
    const auto box = desk.crewOf(whose);
    auto post = desk.post();
    if (!box || !post)
        return box ? post.error() : box.error();
    sync::BundleStorage storage(std::get<sync::Bundle>(std::move(bundle)));
    const auto exchanged = sync::takeInByHand(*post, *box, storage);
    if (!exchanged)
        return exchanged.error();
    return reportOf(desk, *box, *exchanged);
}

} // namespace

void HandedFile::write()
{
    const QString folder = m_folder.isEmpty()
                               ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)
                               : m_folder;
    QDir().mkpath(folder); // when this fails, writing the file says so
    // The name says nothing of whose it is (job.md D9).
    const QString name = QStringLiteral("lidlark-crew.bundle");
    const QString file = QDir(folder).filePath(name);
    m_busy = true;
    emit changed();
    m_crew->run<Done>(
        this,
        [whose = m_crew->whose(), file = toCore(file)](CrewDesk &desk) {
            return writeBundle(desk, whose, file);
        },
        [this, name, folder](const Outcome &done) {
            m_busy = false;
            m_written = done ? tr("Saved as \"%1\" in %2. Only phones of the crew can open it.")
                                   .arg(name, QDir(folder).dirName())
                             : m_crew->household()->sentenceFor(done.error());
            emit changed();
        });
}

void HandedFile::takeIn(const QString &file)
{
    m_busy = true;
    emit changed();
    m_crew->run<ShareReport>(
        this,
        [whose = m_crew->whose(), file = file.trimmed()](CrewDesk &desk) {
            return takeBundle(desk, whose, file);
        },
        [this](const Result<ShareReport> &report) {
            m_busy = false;
            QStringList said;
            if (!report)
                said.append(m_crew->household()->sentenceFor(report.error()));
            else if (report->trouble)
                said.append(translated(*report->trouble));
            else
                said.append(report->received > 0 ? tr("What was new in it has been taken in.")
                                                 : tr("There was nothing new in it."));
            for (const wording::Sentence &finding :
                 report ? report->findings : std::vector<wording::Sentence>{})
                said.append(translated(finding));
            m_taken = said.join(u'\n');
            emit changed();
            m_crew->household()->announce();
        });
}

} // namespace lidlark::mobile
