#pragma once

#include <string>

namespace samples {

/// What servers of Debian 12 answered to PROPFIND, Depth 1, for getcontentlength, of a folder f0
/// with a file b2 of one byte in it. Recorded from apache2 2.4.71, mod_dav_fs.
inline const std::string apacheListing = R"(<?xml version="1.0" encoding="utf-8"?>
<D:multistatus xmlns:D="DAV:" xmlns:ns0="DAV:">
<D:response xmlns:g0="DAV:">
<D:href>/dav/crew/f0/</D:href>
<D:propstat>
<D:prop>
<g0:getcontentlength/>
</D:prop>
<D:status>HTTP/1.1 404 Not Found</D:status>
</D:propstat>
</D:response>
<D:response xmlns:lp1="DAV:" xmlns:lp2="http://apache.org/dav/props/">
<D:href>/dav/crew/f0/b2</D:href>
<D:propstat>
<D:prop>
<lp1:getcontentlength>1</lp1:getcontentlength>
</D:prop>
<D:status>HTTP/1.1 200 OK</D:status>
</D:propstat>
</D:response>
</D:multistatus>
)";

/// From lighttpd 1.4.69, mod_webdav: a folder has a length as well, that of the disk.
inline const std::string lighttpdListing = R"(<?xml version="1.0" encoding="utf-8"?>
<D:multistatus xmlns:D="DAV:" xmlns:ns0="urn:uuid:c2f41010-65b3-11d1-a29f-00aa00c14882/">
<D:response>
<D:href>/dav/crew/f0/</D:href>
<D:propstat>
<D:prop>
<D:getcontentlength>4096</D:getcontentlength></D:prop>
<D:status>HTTP/1.1 200 OK</D:status>
</D:propstat>
</D:response>
<D:response>
<D:href>/dav/crew/f0/b2</D:href>
<D:propstat>
<D:prop>
<D:getcontentlength>1</D:getcontentlength></D:prop>
<D:status>HTTP/1.1 200 OK</D:status>
</D:propstat>
</D:response>
</D:multistatus>
)";

/// From nginx 1.22.1 with libnginx-mod-http-dav-ext 3.0.0.
inline const std::string nginxListing = R"(<?xml version="1.0" encoding="utf-8" ?>
<D:multistatus xmlns:D="DAV:">
<D:response>
<D:href>/dav/crew/f0/</D:href>
<D:propstat>
<D:prop>
</D:prop>
<D:status>HTTP/1.1 200 OK</D:status>
</D:propstat>
</D:response>
<D:response>
<D:href>/dav/crew/f0/b2</D:href>
<D:propstat>
<D:prop>
<D:getcontentlength>1</D:getcontentlength>
</D:prop>
<D:status>HTTP/1.1 200 OK</D:status>
</D:propstat>
</D:response>
</D:multistatus>
)";

/// From rclone 1.60.1, serve webdav.
inline const std::string rcloneListing =
    R"(<?xml version="1.0" encoding="UTF-8"?><D:multistatus xmlns:D="DAV:"><D:response>)"
    R"(<D:href>/crew/f0/</D:href><D:propstat><D:prop><D:getcontentlength></D:getcontentlength>)"
    R"(</D:prop><D:status>HTTP/1.1 404 Not Found</D:status></D:propstat></D:response><D:response>)"
    R"(<D:href>/crew/f0/b2</D:href><D:propstat><D:prop><D:getcontentlength>1)"
    R"(</D:getcontentlength></D:prop><D:status>HTTP/1.1 200 OK</D:status></D:propstat>)"
    R"(</D:response></D:multistatus>)";

/// The example of RFC 4918, 9.1.5, without its locks and without what it says of its author.
inline const std::string standardListing = R"(<?xml version="1.0" encoding="utf-8" ?>
<D:multistatus xmlns:D="DAV:">
  <D:response>
    <D:href>/container/</D:href>
    <D:propstat>
      <D:prop xmlns:R="http://ns.example.com/boxschema/">
        <R:bigbox><R:BoxType>Box type A</R:BoxType></R:bigbox>
        <D:creationdate>1997-12-01T17:42:21-08:00</D:creationdate>
        <D:displayname>Example collection</D:displayname>
        <D:resourcetype><D:collection/></D:resourcetype>
      </D:prop>
      <D:status>HTTP/1.1 200 OK</D:status>
    </D:propstat>
  </D:response>
  <D:response>
    <D:href>/container/front.html</D:href>
    <D:propstat>
      <D:prop xmlns:R="http://ns.example.com/boxschema/">
        <R:bigbox><R:BoxType>Box type B</R:BoxType></R:bigbox>
        <D:displayname>Example HTML resource</D:displayname>
        <D:getcontentlength>4525</D:getcontentlength>
        <D:getcontenttype>text/html</D:getcontenttype>
        <D:getetag>"zzyzx"</D:getetag>
        <D:getlastmodified
          >Mon, 12 Jan 1998 09:25:56 GMT</D:getlastmodified>
        <D:resourcetype/>
      </D:prop>
      <D:status>HTTP/1.1 200 OK</D:status>
    </D:propstat>
  </D:response>
</D:multistatus>
)";

} // namespace samples
