package com.fasterxml.jackson.datatype.jsonorg

import com.fasterxml.jackson.databind.module.SimpleModule

class JsonOrgModule : SimpleModule()
