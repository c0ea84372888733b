#include "tests/words/translation_file.h"

#include <QFile>
#include <QSaveFile>
#include <QXmlStreamReader>
#include <QXmlStreamWriter>

#include <map>

namespace lidlark::words {

namespace {

void readTranslation(QXmlStreamReader &xml, Translated &message)
{
    const QStringView type = xml.attributes().value(QLatin1String("type"));
    message.unfinished = type == QLatin1String("unfinished");
    if (!message.key.counted) {
        message.forms = {xml.readElementText()};
        return;
    }
    while (xml.readNextStartElement())
        message.forms.append(xml.readElementText());
}

Translated readMessage(QXmlStreamReader &xml, const QString &context)
{
    Translated message;
    message.key.context = context;
    message.key.counted = xml.attributes().value(QLatin1String("numerus")) == QLatin1String("yes");
    while (xml.readNextStartElement()) {
        if (xml.name() == QLatin1String("source"))
            message.key.source = xml.readElementText();
        else if (xml.name() == QLatin1String("translation"))
            readTranslation(xml, message);
        else
            xml.skipCurrentElement();
    }
    return message;
}

void readContext(QXmlStreamReader &xml, TranslationFile &file)
{
    QString context;
    while (xml.readNextStartElement()) {
        if (xml.name() == QLatin1String("name"))
            context = xml.readElementText();
        else if (xml.name() == QLatin1String("message"))
            file.messages.push_back(readMessage(xml, context));
        else
            xml.skipCurrentElement();
    }
}

void writeMessage(QXmlStreamWriter &xml, const Translated &message)
{
    xml.writeStartElement(QStringLiteral("message"));
    if (message.key.counted)
        xml.writeAttribute(QStringLiteral("numerus"), QStringLiteral("yes"));
    xml.writeTextElement(QStringLiteral("source"), message.key.source);
    xml.writeStartElement(QStringLiteral("translation"));
    if (message.unfinished)
        xml.writeAttribute(QStringLiteral("type"), QStringLiteral("unfinished"));
    if (message.key.counted) {
        for (const QString &form : message.forms)
            xml.writeTextElement(QStringLiteral("numerusform"), form);
    } else {
        xml.writeCharacters(message.forms.value(0));
    }
    xml.writeEndElement();
    xml.writeEndElement();
}

} // namespace

int formsOf(const QString &language)
{
    if (language == QLatin1String("pl"))
        return 3;
    return 2; // English, Urdu
}

TranslationFile readTranslations(const QString &path)
{
    TranslationFile file;
    QFile device(path);
    if (!device.open(QIODevice::ReadOnly)) {
        file.problem = device.errorString();
        return file;
    }
    QXmlStreamReader xml(&device);
    if (xml.readNextStartElement())
        file.language = xml.attributes().value(QLatin1String("language")).toString();
    while (xml.readNextStartElement()) {
        if (xml.name() == QLatin1String("context"))
            readContext(xml, file);
        else
            xml.skipCurrentElement();
    }
    if (xml.hasError())
        file.problem = QStringLiteral("line %1: %2").arg(xml.lineNumber()).arg(xml.errorString());
    return file;
}

bool writeTranslations(const QString &path, const TranslationFile &file)
{
    QSaveFile device(path);
    if (!device.open(QIODevice::WriteOnly))
        return false;
    QXmlStreamWriter xml(&device);
    xml.setAutoFormatting(true);
    xml.writeStartDocument();
    xml.writeDTD(QStringLiteral("<!DOCTYPE TS>"));
    xml.writeStartElement(QStringLiteral("TS"));
    xml.writeAttribute(QStringLiteral("version"), QStringLiteral("2.1"));
    xml.writeAttribute(QStringLiteral("language"), file.language);
    xml.writeAttribute(QStringLiteral("sourcelanguage"), QStringLiteral("en"));
    QString context;
    for (const Translated &message : file.messages) {
        if (message.key.context != context) {
            if (!context.isEmpty())
                xml.writeEndElement();
            context = message.key.context;
            xml.writeStartElement(QStringLiteral("context"));
            xml.writeTextElement(QStringLiteral("name"), context);
        }
        writeMessage(xml, message);
    }
    xml.writeEndDocument();
    return device.commit();
}

TranslationFile broughtUpToDate(const TranslationFile &file, const std::vector<SourceKey> &keys)
{
    std::map<SourceKey, Translated> known;
    for (const Translated &message : file.messages)
        known[message.key] = message;
    TranslationFile fresh;
    fresh.language = file.language;
    fresh.messages.reserve(keys.size());
    for (const SourceKey &key : keys) {
        const auto found = known.find(key);
        if (found != known.end() && found->second.key.counted == key.counted) {
            fresh.messages.push_back(found->second);
            continue;
        }
        QStringList empty(key.counted ? formsOf(file.language) : 1);
        fresh.messages.push_back({key, empty, true});
    }
    return fresh;
}

} // namespace lidlark::words
