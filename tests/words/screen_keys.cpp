#include "tests/words/screen_keys.h"

#include "tests/words/translation_file.h"

#include <QProcess>
#include <QTemporaryDir>

#include <algorithm>

namespace lidlark::words {

FoundKeys screenKeysOf(const QString &root)
{
    FoundKeys found;
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("found.ts"));
    QProcess lupdate;
    lupdate.setProcessChannelMode(QProcess::MergedChannels);
    lupdate.start(QStringLiteral(LIDLARK_LUPDATE),
                  {QStringLiteral("-silent"), QStringLiteral("-locations"), QStringLiteral("none"),
                   root + QStringLiteral("/mobile"), QStringLiteral("-I"), root,
                   QStringLiteral("-ts"), path});
    const bool ended = lupdate.waitForFinished(-1) && lupdate.exitCode() == 0;
    const QString said = QString::fromUtf8(lupdate.readAll()).trimmed();
    if (!ended || !said.isEmpty())
        found.problems.append(QStringLiteral("lupdate: ") + said + lupdate.errorString());
    const TranslationFile file = readTranslations(path);
    if (!file.problem.isEmpty())
        found.problems.append(file.problem);
    for (const Translated &message : file.messages)
        found.keys.push_back(message.key);
    std::sort(found.keys.begin(), found.keys.end());
    return found;
}

FoundKeys allKeysOf(const QString &root)
{
    FoundKeys all = screenKeysOf(root);
    const FoundKeys core = coreKeysOf(root);
    all.keys.insert(all.keys.end(), core.keys.begin(), core.keys.end());
    all.problems.append(core.problems);
    std::sort(all.keys.begin(), all.keys.end());
    return all;
}

} // namespace lidlark::words
