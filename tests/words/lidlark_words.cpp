#include "tests/words/screen_keys.h"
#include "tests/words/translation_file.h"

#include <QFile>
#include <QTextStream>

#include <algorithm>

using namespace lidlark::words;

namespace {

/// @returns how many of its messages are unfinished; -1: it could not be written.
qsizetype bringUpToDate(const QString &path, const QString &language,
                        const std::vector<SourceKey> &keys)
{
    TranslationFile file;
    if (QFile::exists(path))
        file = readTranslations(path);
    if (!file.problem.isEmpty())
        return -1;
    file.language = language;
    const TranslationFile fresh = broughtUpToDate(file, keys);
    if (!writeTranslations(path, fresh))
        return -1;
    return std::count_if(fresh.messages.begin(), fresh.messages.end(),
                         [](const Translated &message) { return message.unfinished; });
}

} // namespace

/// `lidlark-words [FOLDER]`: brings lidlark_pl.ts and lidlark_ur.ts up to date with what the
/// screens and the core can say; without a folder those of assets/translations.
int main(int argc, char **argv)
{
    QTextStream out(stdout);
    const QString root = QStringLiteral(LIDLARK_SOURCE_DIR);
    const QString folder =
        argc > 1 ? QString::fromLocal8Bit(argv[1]) : root + QStringLiteral("/assets/translations");
    const FoundKeys found = allKeysOf(root);
    for (const QString &problem : found.problems)
        out << problem << '\n';
    if (!found.problems.isEmpty())
        return 1;
    for (const char *language : {"pl", "ur"}) {
        const QString code = QString::fromLatin1(language);
        const QString path = QStringLiteral("%1/lidlark_%2.ts").arg(folder, code);
        const qsizetype unfinished = bringUpToDate(path, code, found.keys);
        if (unfinished < 0) {
            out << path << ": cannot be read or written; it was left as it is\n";
            return 1;
        }
        out << path << ": " << found.keys.size() << " keys, " << unfinished << " unfinished\n";
    }
    return 0;
}
