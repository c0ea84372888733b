#include "core/sync/connection_words.h"

namespace lidlark::sync {

namespace {

using wording::say;
using wording::Sentence;

Sentence sentenceForUse(Connection connection)
{
    switch (connection) {
    case Connection::NoFolders:
        return {
            say("No folder can be made there. Ask whoever looks after it for the right to write."),
            {}};
    case Connection::NoWriting:
        return {say("Nothing can be written there: perhaps only reading is allowed."), {}};
    case Connection::Full:
        return {say("The place is full. Make some room there, or choose another."), {}};
    case Connection::NoListing:
        return {say("What lies in the place cannot be seen, or not at once. Choose another."), {}};
    case Connection::NoRenaming:
        return {
            say("A file there cannot be given another name: something in front of the server is "
                "in the way. Choose another place, or ask whoever looks after it."),
            {}};
    case Connection::RenamesOver:
        return {say("The place lets one file push out another, so something could be lost. Choose "
                    "another."),
                {}};
    case Connection::ChangesBytes:
        return {say("What is read there is not what was written. Choose another place."), {}};
    default:
        return {say("Nothing can be taken away from the place again. Choose another."), {}};
    }
}

} // namespace

Sentence sentenceFor(Connection connection)
{
    switch (connection) {
    case Connection::Works:
        return {say("It works: the phones can leave and fetch there what they share."), {}};
    case Connection::NoAnswer:
        return {say("Nobody answers there now. Check the address and the network, then try again."),
                {}};
    case Connection::NotTrusted:
        return {
            say("The server cannot show that it is the one it says it is. Nothing was sent to it. "
                "Ask whoever looks after it for a valid certificate."),
            {}};
    case Connection::NotLetIn:
        return {say("The place does not open: check the name and the password."), {}};
    case Connection::NoStorage:
        return {
            say("Something answers, but no files can be kept there. Check the address: it is the "
                "one for WebDAV, not the one of a page."),
            {}};
    default:
        return sentenceForUse(connection);
    }
}

Sentence sentenceFor(AddressFault fault)
{
    switch (fault) {
    case AddressFault::OtherScheme:
        return {say("An address begins with https. Copy the one for WebDAV."), {}};
    case AddressFault::NotSafe:
        return {
            say("This address begins with http: anybody on the way could read the password. Use "
                "the one with https."),
            {}};
    case AddressFault::HasQuery:
        return {say("This is the address of a page for people. Copy the one for WebDAV."), {}};
    case AddressFault::TwoCredentials:
        return {say("A name or a password stands in the address and below it as well. Leave one of "
                    "them out."),
                {}};
    case AddressFault::NotSendable:
        return {say("The name or the password holds a sign that cannot be sent."), {}};
    case AddressFault::Unreadable:
        break;
    }
    return {say("This is no address of a place. It looks like https://example.org/crew, or like a "
                "folder of this phone: /home/crew."),
            {}};
}

} // namespace lidlark::sync
