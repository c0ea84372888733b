#include "mobile/bridge/sentence.h"

#include <QCoreApplication>

#include "mobile/bridge/text.h"

namespace lidlark::mobile {

QString translated(const wording::Sentence &sentence)
{
    const QString text = QCoreApplication::translate("core", sentence.english.c_str());
    std::vector<std::string> arguments;
    arguments.reserve(sentence.arguments.size());
    // A name, or what a family typed, has no translation and comes back as it was.
    for (const std::string &argument : sentence.arguments)
        arguments.push_back(toCore(QCoreApplication::translate("core", argument.c_str())));
    return fromCore(wording::fill({toCore(text), arguments}));
}

} // namespace lidlark::mobile
